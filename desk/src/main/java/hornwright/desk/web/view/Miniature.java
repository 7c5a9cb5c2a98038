package hornwright.desk.web.view;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.ToneHole;
import hornwright.bench.horn.TubePart;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * A horn standing small: its tube opened flat, every cup where it lies and as large as it is; a cup is filled once its pad
 * is sized, half while that is provisional, so that the horn itself tells how far it has come.
 *
 * @param outline SVG path of the tube
 * @param bands SVG path of the joints
 */
public record Miniature(String viewBox, String outline, String bands, List<Disc> discs, String told) {
    private static final double WIDE = 2.8;

    public Miniature {
        discs = List.copyOf(discs);
    }

    /** @param look class names */
    public record Disc(String x, String y, String r, String look) {}

    /** How far the pads are sized. */
    public static Miniature of(Keywork keywork, Function<Cup, PadSizes.Size> size) {
        return of(keywork, size, PadSizes.of(keywork.cups().list(), size).words());
    }

    /** A horn on which some cups are pointed at; {@code told} says which. */
    public static Miniature pointing(Keywork keywork, Predicate<Cup> at, String told) {
        return of(keywork, cup -> at.test(cup) ? PadSizes.Size.SIZED : PadSizes.Size.OPEN, told);
    }

    private static Miniature of(Keywork keywork, Function<Cup, PadSizes.Size> size, String told) {
        double length = keywork.tube().lengthMm();
        double widest = keywork.tube().bore().getLast().diameterMm() * WIDE / 2;
        List<Disc> discs = new ArrayList<>();
        for (Cup cup : keywork.cups()) {
            ToneHole hole = keywork.holeOf(cup);
            double half = half(keywork, hole.at().atMm());
            double x = half * Math.clamp(hole.at().angleDeg() / 150, -0.8, 0.8);
            discs.add(new Disc(
                    n(x), n(hole.at().atMm()), n(Math.max(8, cup.insideDiameterMm() * 0.62)), look(size.apply(cup))));
        }
        return new Miniature(
                "%s -6 %s %s".formatted(n(-widest - 6), n(2 * widest + 12), n(length + 12)),
                outline(keywork),
                bands(keywork),
                discs,
                told);
    }

    private static String look(PadSizes.Size size) {
        return switch (size) {
            case OPEN -> "disc";
            case PROVISIONAL -> "disc provisional";
            case SIZED -> "disc settled";
        };
    }

    private static String outline(Keywork keywork) {
        double length = keywork.tube().lengthMm();
        StringBuilder down = new StringBuilder();
        StringBuilder up = new StringBuilder();
        int steps = 48;
        for (int i = 0; i <= steps; i++) {
            double at = length * i / steps;
            double half = half(keywork, at);
            down.append(i == 0 ? "M" : "L").append(n(-half)).append(' ').append(n(at));
            up.insert(0, "L" + n(half) + " " + n(at));
        }
        return down.append(up).append('Z').toString();
    }

    private static String bands(Keywork keywork) {
        StringBuilder bands = new StringBuilder();
        for (TubePart part : keywork.tube().parts()) {
            if (part.fromMm() > 0) {
                double half = half(keywork, part.fromMm());
                bands.append("M%s %sH%s".formatted(n(-half), n(part.fromMm()), n(half)));
            }
        }
        return bands.toString();
    }

    /** Half the width of the flattened tube; opened more widely than it is round, so that cups have room. */
    private static double half(Keywork keywork, double at) {
        return Math.max(keywork.tube().diameterMm(at) * WIDE / 2, 13);
    }

    private static String n(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
