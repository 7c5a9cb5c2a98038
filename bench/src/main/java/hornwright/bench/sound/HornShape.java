package hornwright.bench.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.ToneHole;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What is known of one horn beyond its pattern; the pattern stands for the rest.
 *
 * @param frontMm heights at the front edge, by cup
 * @param holeMm inside diameters, by hole
 * @param armMm axis to centre, by cup
 * @param bellMm by how much the bell acts longer than its plane waves say, because it flares; the one free correction
 * @param fit mouthpiece and bore as a play test tells them; null for those of the pattern
 */
public record HornShape(
        Map<String, Double> frontMm,
        Map<String, Double> holeMm,
        Map<String, Double> armMm,
        double bellMm,
        @Nullable BoreFit fit) {
    /** The pattern itself. */
    public static final HornShape PATTERN = new HornShape(Map.of(), Map.of(), Map.of(), 0, null);

    public HornShape {
        frontMm = Map.copyOf(frontMm);
        holeMm = Map.copyOf(holeMm);
        armMm = Map.copyOf(armMm);
    }

    /** The pattern with its cups at these heights. */
    public static HornShape at(Map<String, Double> frontMm) {
        return PATTERN.withHeights(frontMm);
    }

    public HornShape withHeights(Map<String, Double> other) {
        return new HornShape(other, holeMm, armMm, bellMm, fit);
    }

    public HornShape fitted(@Nullable BoreFit other) {
        return new HornShape(frontMm, holeMm, armMm, bellMm, other);
    }

    public double frontMm(Cup cup) {
        return frontMm.getOrDefault(cup.id(), cup.heightFrontMm());
    }

    public double holeMm(ToneHole hole) {
        return holeMm.getOrDefault(hole.id(), hole.diameterMm());
    }

    /** Opening at the cup centre over that at the front edge. */
    public double centrePerFront(Cup cup, ToneHole hole) {
        double arm = armMm.getOrDefault(cup.id(), cup.armMm());
        return arm / (arm + holeMm(hole) / 2);
    }
}
