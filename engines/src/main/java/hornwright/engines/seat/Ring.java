package hornwright.engines.seat;

import hornwright.engines.seat.Profile.Harmonic;
import hornwright.engines.seat.Profile.Harmonics;
import hornwright.engines.seat.Profile.Points;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/** Compression round the whole rim, in m, as smooth stretches from 0 to 2π. */
record Ring(List<Wave> waves) {
    private static final GaussIntegrator GAUSS = new GaussIntegratorFactory().legendre(16);
    private static final double TURN = 2 * Math.PI;

    /** Heights this much apart (m) count as equal: far below anything measurable, above rounding. */
    static final double EQUAL = 1e-13;

    /** Receives the nodes of an integral over the angle. */
    interface Sink {
        void add(double angle, double weight, double compression);
    }

    /** A height and where it lies. */
    record Spot(double angle, double height) {}

    /** The sum of profiles. */
    static Ring of(Profile... profiles) {
        int order = 1;
        TreeSet<Double> knots = new TreeSet<>(List.of(0.0));
        for (Profile profile : profiles) {
            switch (profile) {
                case Harmonics harmonics -> {
                    for (Harmonic term : harmonics.terms()) {
                        order = Math.max(order, term.order());
                    }
                }
                case Points points -> points.points().forEach(point -> knots.add(point.angle()));
            }
        }
        double[] cos = new double[order + 1];
        double[] sin = new double[order + 1];
        for (Profile profile : profiles) {
            if (profile instanceof Harmonics harmonics) {
                for (Harmonic term : harmonics.terms()) {
                    cos[term.order()] += term.cos();
                    sin[term.order()] += term.sin();
                }
            }
        }
        return new Ring(stretches(new ArrayList<>(knots), profiles, cos, sin));
    }

    private static List<Wave> stretches(List<Double> knots, Profile[] profiles, double[] cos, double[] sin) {
        List<Wave> waves = new ArrayList<>(knots.size());
        for (int i = 0; i < knots.size(); i++) {
            double from = knots.get(i);
            double to = i + 1 < knots.size() ? knots.get(i + 1) : TURN;
            double left = 0;
            double right = 0;
            for (Profile profile : profiles) {
                if (profile instanceof Points points) {
                    left += points.at(from);
                    right += points.at(to);
                }
            }
            double slope = (right - left) / (to - from);
            waves.add(new Wave(from, to, left - slope * from + cos[0], slope, cos, sin));
        }
        return List.copyOf(waves);
    }

    /** Raised by a constant and a tilt (all m at the rim). */
    Ring moved(double rise, double tiltCos, double tiltSin) {
        List<Wave> moved = new ArrayList<>(waves.size());
        for (Wave wave : waves) {
            moved.add(wave.moved(rise, tiltCos, tiltSin));
        }
        return new Ring(moved);
    }

    Spot highest() {
        return extreme(1);
    }

    Spot lowest() {
        return extreme(-1);
    }

    /** The extreme in this direction; of several equal ones that with the smallest angle. */
    private Spot extreme(int direction) {
        List<Spot> spots = new ArrayList<>();
        double best = Double.NEGATIVE_INFINITY;
        double worst = Double.POSITIVE_INFINITY;
        for (Wave wave : waves) {
            for (double angle : wave.turns()) {
                double height = direction * wave.value(angle);
                best = Math.max(best, height);
                worst = Math.min(worst, height);
                spots.add(new Spot(angle >= TURN ? 0 : angle, height));
            }
        }
        double near = best - 1e-9 * (best - worst) - EQUAL;
        double angle = TURN;
        for (Spot spot : spots) {
            if (spot.height() >= near && spot.angle() < angle) {
                angle = spot.angle();
            }
        }
        return new Spot(angle, direction * best);
    }

    /** Hands every node of a piecewise Gauss rule to the sink; no piece straddles a level or a corner. */
    void integrate(double[] levels, Sink sink) {
        for (Wave wave : waves) {
            double longest = Math.PI / (4 * wave.order());
            double[] cuts = wave.cuts(levels);
            for (int i = 1; i < cuts.length; i++) {
                double length = cuts[i] - cuts[i - 1];
                int pieces = (int) Math.ceil(length / longest);
                for (int p = 0; p < pieces; p++) {
                    piece(wave, cuts[i - 1] + length * p / pieces, length / pieces / 2, sink);
                }
            }
        }
    }

    private static void piece(Wave wave, double from, double half, Sink sink) {
        for (int k = 0; k < GAUSS.getNumberOfPoints(); k++) {
            double angle = from + half * (1 + GAUSS.getPoint(k));
            sink.add(angle, half * GAUSS.getWeight(k), wave.value(angle));
        }
    }
}
