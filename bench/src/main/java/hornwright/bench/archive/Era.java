package hornwright.bench.archive;

import hornwright.engines.belief.BeliefAnswer;
import hornwright.engines.belief.BeliefAnswer.Segment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of serials without a change, of the most probable segmentation, and the change nearest to the serial asked for.
 */
record Era(SerialRange serials, AsBuiltAt.@Nullable ChangeOver nearestChange) {

    /** The era a serial lies in; between two eras the one that had this material, outside all the nearest. */
    static Era around(long serial, String material, BeliefAnswer answer) {
        List<Segment> segments = answer.best();
        if (segments.isEmpty()) {
            return new Era(SerialRange.one(serial), null);
        }
        Segment nearest = segments.getFirst();
        for (Segment segment : segments) {
            long gain = distance(serial, nearest.from(), nearest.to()) - distance(serial, segment.from(), segment.to());
            boolean betweenBoth = serial > nearest.to() && serial < segment.from();
            if (betweenBoth
                    ? !mainOf(nearest).equals(material) && mainOf(segment).equals(material)
                    : gain > 0) {
                nearest = segment;
            }
        }
        return new Era(new SerialRange(nearest.from(), nearest.to()), nearestChange(serial, answer));
    }

    /** The changes of the most probable segmentation, ascending. */
    static List<AsBuiltAt.ChangeOver> changes(BeliefAnswer answer) {
        List<AsBuiltAt.ChangeOver> changes = new ArrayList<>();
        for (int i = 0; i < answer.changeOver().size(); i++) {
            BeliefAnswer.ChangeOver over = answer.changeOver().get(i);
            changes.add(new AsBuiltAt.ChangeOver(
                    new SerialRange(over.from(), over.to()),
                    mainOf(answer.best().get(i)),
                    mainOf(answer.best().get(i + 1)),
                    over.probability()));
        }
        return changes;
    }

    private static AsBuiltAt.@Nullable ChangeOver nearestChange(long serial, BeliefAnswer answer) {
        return changes(answer).stream()
                .min(Comparator.comparingLong(change -> distance(
                        serial, change.between().from(), change.between().to())))
                .orElse(null);
    }

    private static long distance(long serial, long from, long to) {
        return Math.max(0, Math.max(from - serial, serial - to));
    }

    private static String mainOf(Segment segment) {
        return segment.counts().entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse("");
    }
}
