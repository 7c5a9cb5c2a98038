package hornwright.desk.drawing;

import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.archive.Course;
import hornwright.bench.archive.Family;
import hornwright.bench.archive.Habit;
import hornwright.bench.archive.SerialRange;
import hornwright.bench.horn.Cut;
import hornwright.bench.horn.Form;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.engines.belief.Standing;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What stands in words beside the bands of a ruler, on the screen as on paper. A grade and a probability never share a sentence. */
public final class RulerWords {
    private RulerWords() {}

    public static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** "Low B♭ foot" or, of several, "Feet". */
    public static String title(Family family) {
        return capital(family.places().size() == 1 ? family.places().getFirst().display() : plural(family.kind()));
    }

    private static String plural(PlaceKind kind) {
        return switch (kind) {
            case FOOT -> "feet";
            case FINISH -> "finishes";
            case ADHESIVE, ENGRAVING -> kind.spoken();
            default -> kind.spoken() + "s";
        };
    }

    /** "lower stack, upper stack: 9 places"; nothing of a single place. */
    public static String where(Keywork keywork, Family family) {
        if (family.places().size() == 1) {
            return "";
        }
        String groups = family.places().stream()
                .map(place -> groupOf(keywork, place))
                .distinct()
                .collect(Collectors.joining(", "));
        return groups + ": " + family.places().size() + " places";
    }

    private static String groupOf(Keywork keywork, Place place) {
        String title = keywork.groupOf(place).map(KeyGroup::title).orElse("tube and neck");
        return title.startsWith("G♯") ? title : title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
    }

    /** What was likeliest, from the first horn looked at to the last. */
    public static List<String> inOrder(Course course) {
        long first = course.marks().getFirst().serial();
        long last = course.marks().getLast().serial();
        Set<String> words = new LinkedHashSet<>();
        course.steps().stream()
                .filter(step -> step.serial() >= first && step.serial() <= last)
                .forEach(step -> words.add(step.likeliest()));
        return List.copyOf(words);
    }

    /** "2 looks show rubber cement; the works used both …"; nothing where all agree. */
    public static String besides(Course course) {
        return Stream.concat(
                        Stream.of(differing(course)), course.habits().stream().map(Habit::inWords))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining("; "));
    }

    private static String differing(Course course) {
        List<String> others = course.marks().stream()
                .filter(mark -> course.isAgainst(mark))
                .map(Course.Mark::material)
                .toList();
        if (others.isEmpty()) {
            return "";
        }
        String words = others.stream().distinct().collect(Collectors.joining(" and "));
        return (others.size() == 1 ? "one look shows " : others.size() + " looks show ") + words;
    }

    /** "0.97". */
    public static String chance(AsBuiltAt built) {
        double p = built.probability();
        return p >= 0.995 ? "over 0.99" : String.format(Locale.ROOT, "%.2f", p);
    }

    /** How this serial stands to the horns looked at; interpolated and extrapolated are said in these words. */
    public static String ground(AsBuiltAt built) {
        SerialRange near = built.neighbours();
        if (near == null) {
            return "no horn looked at";
        }
        return switch (built.standing()) {
            case Standing.OBSERVED -> "seen on this very horn";
            case Standing.EXTRAPOLATED -> "extrapolated, nearest look at " + near.from();
            case Standing.INTERPOLATED -> "interpolated, between %d and %d".formatted(near.from(), near.to());
        };
    }

    /** The band in one sentence, for who cannot see it. */
    public static String told(Family family) {
        Course course = family.course();
        String changes = Stream.concat(
                        course.changes().stream().map(RulerWords::told),
                        course.habits().stream().map(Habit::inWords))
                .collect(Collectors.joining("; "));
        long horns =
                course.marks().stream().map(Course.Mark::witness).distinct().count();
        return "%s: %d horns looked at, %d to %d. %s."
                .formatted(
                        title(family),
                        horns,
                        course.marks().getFirst().serial(),
                        course.marks().getLast().serial(),
                        changes.isEmpty() ? String.join(", ", inOrder(course)) + " throughout" : changes);
    }

    private static String told(AsBuiltAt.ChangeOver change) {
        return "%s changes to %s between %d and %d"
                .formatted(
                        change.before(),
                        change.after(),
                        change.between().from(),
                        change.between().to());
    }

    /** Old cork and felt is packed, so what was measured is a lower bound. */
    public static String thickness(@Nullable Double atLeast) {
        return atLeast == null
                ? ""
                : "at least "
                        + BigDecimal.valueOf(atLeast)
                                .setScale(2, RoundingMode.HALF_UP)
                                .stripTrailingZeros()
                                .toPlainString()
                        + " mm";
    }

    /** "strip, knifed, stuck with shellac". */
    public static String made(@Nullable Form shape, @Nullable Cut cut, @Nullable String adhesive) {
        return Stream.of(
                        shape == null ? "" : shape.word(),
                        cut == null ? "" : cut.word().replace('-', ' '),
                        adhesive == null ? "" : "stuck with " + adhesive)
                .filter(word -> !word.isEmpty())
                .collect(Collectors.joining(", "));
    }
}
