package hornwright.desk.web.archive;

import hornwright.desk.web.view.State;
import java.util.List;

/**
 * Serials along, a band a family of places.
 *
 * @param patterns what the bands refer to
 * @param axis the numbered edge
 */
public record Ruler(String patterns, String axis, List<Row> rows) {
    public Ruler {
        rows = List.copyOf(rows);
    }

    /**
     * One band.
     *
     * @param where the groups of keys it speaks of, and of how many places
     * @param chips what the band shows, in the order of the serials
     * @param more what was also seen, in words; mostly empty
     * @param chance what is likeliest at this serial and how likely; never in one sentence with the grade
     * @param ground how this serial stands to the horns looked at
     * @param evidence where everything behind it is told
     */
    public record Row(
            String title,
            String where,
            List<Chip> chips,
            String more,
            String band,
            State grade,
            String chance,
            String material,
            String ground,
            String evidence) {
        public Row {
            chips = List.copyOf(chips);
        }
    }

    /** A material with its pattern. */
    public record Chip(String swatch, String word) {}
}
