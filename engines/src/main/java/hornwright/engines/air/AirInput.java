package hornwright.engines.air;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A horn and what is asked of it. Lengths in m, positions along the axis from the small end to the bell.
 *
 * @param bore at least two points, straight between them, positions ascending
 * @param losses friction and heat at the walls
 * @param interaction whether open holes hear each other outside
 * @param modes how many resonances are wanted of each fingering
 * @param sensitivity whether the effect of every pad height is wanted
 * @param curve which part of the impedance curve is wanted; null for none
 */
public record AirInput(
        Air air,
        List<BorePoint> bore,
        Mouthpiece mouthpiece,
        Bell bell,
        List<Hole> holes,
        List<Fingering> fingerings,
        List<Leak> leaks,
        boolean losses,
        boolean interaction,
        int modes,
        boolean sensitivity,
        @Nullable Curve curve) {
    public AirInput {
        bore = List.copyOf(bore);
        holes = List.copyOf(holes);
        fingerings = List.copyOf(fingerings);
        leaks = List.copyOf(leaks);
        if (bore.size() < 2 || modes < 1) {
            throw new IllegalArgumentException("a bore has two points or more, and one mode at least is asked");
        }
        for (int i = 1; i < bore.size(); i++) {
            if (!(bore.get(i).at() > bore.get(i - 1).at())) {
                throw new IllegalArgumentException("bore points ascend");
            }
        }
        for (Fingering fingering : fingerings) {
            for (int open : fingering.open()) {
                Pad pad = holes.get(open).pad();
                if (pad != null && !(pad.height() > 0)) {
                    throw new IllegalArgumentException("a pad over an open hole stands above it");
                }
            }
        }
    }

    /** The bore at one spot. */
    public record BorePoint(double at, double radius) {
        public BorePoint {
            if (!(radius > 0) || !Double.isFinite(at)) {
                throw new IllegalArgumentException("a bore has a radius everywhere");
            }
        }
    }

    /** What stands before the small end. */
    public sealed interface Mouthpiece {
        /** Mouthpiece and reed as one volume (m³) in parallel; 0 for none. */
        record Cavity(double volume) implements Mouthpiece {}

        /** A tube before the small end, the reed's equivalent volume (m³) in parallel at its outer end. */
        record Cylinder(double length, double radius, double reed) implements Mouthpiece {}
    }

    /** How the bell ends. */
    public enum End {
        UNFLANGED,
        FLANGED,
        IDEAL
    }

    /** The open end, and a length by which it seems longer than it is. */
    public record Bell(End end, double extra) {}

    /**
     * A tone hole.
     *
     * @param chimney from the plane that touches the bore to the rim
     * @param rimWall thickness of the rim
     * @param pad null for a bare hole
     */
    public record Hole(
            double at,
            double radius,
            double chimney,
            double rimWall,
            @Nullable Pad pad) {
        public Hole {
            if (!(radius > 0 && chimney >= 0 && rimWall >= 0)) {
                throw new IllegalArgumentException("a hole has a radius, a chimney and a rim");
            }
        }

        /** The same hole with its pad at another height. */
        public Hole withHeight(double height) {
            Pad old = pad;
            if (old == null) {
                throw new IllegalStateException("a bare hole has no pad height");
            }
            return new Hole(at, radius, chimney, rimWall, new Pad(old.radius(), height, old.protrusion()));
        }
    }

    /**
     * A pad.
     *
     * @param height of its face above the rim at the cup centre when open
     * @param protrusion how far it stands into the chimney when closed
     */
    public record Pad(double radius, double height, double protrusion) {}

    /**
     * Which holes stand open.
     *
     * @param open indices into the holes
     * @param peak number of the resonance that sounds, 1 the lowest
     */
    public record Fingering(List<Integer> open, int peak) {
        public Fingering {
            open = List.copyOf(open);
        }
    }

    /** A round leak through the wall. */
    public record Leak(double at, double radius, double depth) {}

    /** Evenly spaced frequencies, Hz, both ends included. */
    public record Curve(double from, double to, int points) {}

    /** The same horn with other holes; for a pad moved or a hole added. */
    public AirInput withHoles(List<Hole> other) {
        return new AirInput(
                air, bore, mouthpiece, bell, other, fingerings, leaks, losses, interaction, modes, sensitivity, curve);
    }

    /** The same horn with other leaks. */
    public AirInput withLeaks(List<Leak> other) {
        return new AirInput(
                air, bore, mouthpiece, bell, holes, fingerings, other, losses, interaction, modes, sensitivity, curve);
    }

    /** The same horn asked for other fingerings. */
    public AirInput withFingerings(List<Fingering> other) {
        return new AirInput(
                air, bore, mouthpiece, bell, holes, other, leaks, losses, interaction, modes, sensitivity, curve);
    }

    /** The same horn with its open holes hearing each other outside. */
    public AirInput interacting() {
        return new AirInput(
                air, bore, mouthpiece, bell, holes, fingerings, leaks, losses, true, modes, sensitivity, curve);
    }

    /** The same horn with another mouthpiece. */
    public AirInput withMouthpiece(Mouthpiece other) {
        return new AirInput(
                air, bore, other, bell, holes, fingerings, leaks, losses, interaction, modes, sensitivity, curve);
    }

    /** The same horn with another bore. */
    public AirInput withBore(List<BorePoint> other) {
        return new AirInput(
                air, other, mouthpiece, bell, holes, fingerings, leaks, losses, interaction, modes, sensitivity, curve);
    }
}
