package hornwright.desk.paper;

import org.jspecify.annotations.Nullable;

/**
 * One pad on the layout mat.
 *
 * @param name trade name of its cup
 * @param group what it comes off with: the rod
 * @param diameterMm of the pad, drawn at true size
 * @param holeMm of its tone hole, drawn dashed inside; null when nobody knows it
 * @param note one short line under the name: the thickness window
 */
public record MatDisc(
        String name,
        String group,
        double diameterMm,
        @Nullable Double holeMm,
        String note) {
    public MatDisc {
        if (!(diameterMm > 0 && diameterMm <= 120)) {
            throw new IllegalArgumentException("a pad of " + diameterMm + " mm does not fit on a mat");
        }
    }
}
