package hornwright.desk.units;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How one instrument types: through which layout, and in which unit its bare numbers are.
 *
 * @param unit of a number that arrives without one
 */
public record Caliper(KeyLayout layout, LengthUnit unit) {
    /** What the display showed and what arrived. */
    public record Sample(String shown, String arrived) {}

    /** What was learnt, or a sentence why nothing could be. */
    public sealed interface Learnt {
        record Profile(Caliper caliper) implements Learnt {}

        record Unclear(String sentence) implements Learnt {}
    }

    /** The text a person would have typed: leading zeros and a plus, as any layout writes it, are dropped. */
    public String plain(String arrived) {
        String meant = layout.meant(arrived.strip()).replaceAll("\\s+", " ");
        return meant.replaceFirst("^[+^´¡=]\\s*", "").replaceFirst("^0+(?=\\d)", "");
    }

    public Typed read(String arrived) {
        return Lengths.read(plain(arrived), unit);
    }

    /** From three different readings, the layout that makes each arrive as it was shown. */
    public static Learnt learn(List<Sample> samples, LengthUnit unit) {
        if (samples.size() < 3
                || samples.stream().map(Sample::arrived).distinct().count() < 3
                || samples.stream().map(Sample::shown).distinct().count() < 3) {
            return new Learnt.Unclear(
                    "Three different readings tell a layout; take them at three sizes, like 4, 17 and 48.");
        }
        return Arrays.stream(KeyLayout.values())
                .map(layout -> new Caliper(layout, unit))
                .filter(caliper -> samples.stream().allMatch(caliper::explains))
                .<Learnt>map(Learnt.Profile::new)
                .findFirst()
                .orElse(
                        new Learnt.Unclear(
                                "No layout makes these arrive as they were shown. See that unit and numbers stand as on the display, and that each arrived whole."));
    }

    private boolean explains(Sample sample) {
        Typed shown = Lengths.read(sample.shown(), unit);
        Typed came = read(sample.arrived());
        return shown instanceof Typed.Amount a
                && came instanceof Typed.Amount b
                && a.value().compareTo(b.value()) == 0;
    }

    /** {@code fr.millimetre}, which {@link #parse} reads back. */
    public String text() {
        return (layout.name() + "." + unit.name()).toLowerCase(Locale.ROOT);
    }

    public static Optional<Caliper> parse(String text) {
        String[] parts = text.toUpperCase(Locale.ROOT).split("\\.");
        if (parts.length != 2) {
            return Optional.empty();
        }
        Optional<KeyLayout> layout = Arrays.stream(KeyLayout.values())
                .filter(one -> one.name().equals(parts[0]))
                .findFirst();
        Optional<LengthUnit> unit = Arrays.stream(LengthUnit.values())
                .filter(one -> one.name().equals(parts[1]))
                .findFirst();
        return layout.isPresent() && unit.isPresent()
                ? Optional.of(new Caliper(layout.get(), unit.get()))
                : Optional.empty();
    }
}
