package hornwright.bench.archive;

import hornwright.engines.belief.BeliefAnswer;
import hornwright.engines.belief.WorkshopAnswer;
import hornwright.engines.belief.WorkshopAnswer.Spell;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of serials in which the works kept to one way, of the most probable course, and the change nearest to the
 * serial asked for.
 *
 * @param habit set when that way was to use more than one material
 */
record Era(
        SerialRange serials,
        AsBuiltAt.@Nullable ChangeOver nearestChange,
        @Nullable Habit habit) {

    /** The era a serial lies in; between two eras the one that had this material, outside all the nearest. */
    static Era around(long serial, String material, WorkshopAnswer answer) {
        List<Spell> spells = answer.best();
        if (spells.isEmpty()) {
            return new Era(SerialRange.one(serial), null, null);
        }
        Spell nearest = spells.getFirst();
        for (Spell spell : spells) {
            long gain = distance(serial, nearest.from(), nearest.to()) - distance(serial, spell.from(), spell.to());
            boolean betweenBoth = serial > nearest.to() && serial < spell.from();
            if (betweenBoth ? !mainOf(nearest).equals(material) && mainOf(spell).equals(material) : gain > 0) {
                nearest = spell;
            }
        }
        return new Era(
                new SerialRange(nearest.from(), nearest.to()),
                nearestChange(serial, answer),
                nearest.isMixed() ? Habit.of(nearest) : null);
    }

    /** The changes of the most probable course, ascending. */
    static List<AsBuiltAt.ChangeOver> changes(WorkshopAnswer answer) {
        List<AsBuiltAt.ChangeOver> changes = new ArrayList<>();
        for (int i = 0; i < answer.changeOver().size(); i++) {
            BeliefAnswer.ChangeOver over = answer.changeOver().get(i);
            changes.add(new AsBuiltAt.ChangeOver(
                    new SerialRange(over.from(), over.to()),
                    named(answer.best().get(i)),
                    named(answer.best().get(i + 1)),
                    over.probability()));
        }
        return changes;
    }

    /** The times in which more than one material was in use, ascending. */
    static List<Habit> habits(WorkshopAnswer answer) {
        return answer.best().stream().filter(Spell::isMixed).map(Habit::of).toList();
    }

    private static AsBuiltAt.@Nullable ChangeOver nearestChange(long serial, WorkshopAnswer answer) {
        return changes(answer).stream()
                .min(Comparator.comparingLong(change -> distance(
                        serial, change.between().from(), change.between().to())))
                .orElse(null);
    }

    private static long distance(long serial, long from, long to) {
        return Math.max(0, Math.max(from - serial, serial - to));
    }

    /** "natural cork", or of a habit "natural cork and woven wool felt". */
    private static String named(Spell spell) {
        return Habit.listed(List.copyOf(Habit.of(spell).shares().keySet()));
    }

    private static String mainOf(Spell spell) {
        return Habit.of(spell).shares().keySet().iterator().next();
    }
}
