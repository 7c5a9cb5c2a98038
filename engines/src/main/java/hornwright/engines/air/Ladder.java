package hornwright.engines.air;

import hornwright.engines.air.AirInput.Hole;
import hornwright.engines.air.AirInput.Leak;
import hornwright.engines.air.AirInput.Mouthpiece;
import hornwright.engines.air.Rung.Branch;
import hornwright.engines.air.Rung.Pinhole;
import hornwright.engines.air.Rung.Stretch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The horn as a chain of elements from the small end to the bell, ready to be asked at any frequency. */
final class Ladder {
    /** Doubles of one matrix. */
    static final int SIZE = 8;

    final AirInput input;
    final Bore bore;
    final List<Rung> rungs;
    final double bellRadius;

    private record Stop(double at, Rung rung) {}

    Ladder(AirInput input) {
        this.input = input;
        bore = new Bore(input.bore());
        bellRadius = input.bore().getLast().radius();
        rungs = rungs(stops());
    }

    private List<Stop> stops() {
        List<Stop> stops = new ArrayList<>();
        for (int i = 0; i < input.holes().size(); i++) {
            Hole hole = input.holes().get(i);
            HoleShape shape = HoleShape.of(hole, bore.radiusAt(hole.at()));
            stops.add(new Stop(hole.at(), new Branch(i, shape)));
        }
        for (Leak leak : input.leaks()) {
            stops.add(new Stop(leak.at(), new Pinhole(leak.radius(), leak.depth())));
        }
        stops.sort(Comparator.comparingDouble(Stop::at));
        return stops;
    }

    private List<Rung> rungs(List<Stop> stops) {
        List<Rung> all = new ArrayList<>();
        double reached = bore.from();
        for (Stop stop : stops) {
            if (stop.at() > reached) {
                all.add(new Stretch(bore.slices(reached, stop.at())));
                reached = stop.at();
            }
            all.add(stop.rung());
        }
        if (bore.to() > reached) {
            all.add(new Stretch(bore.slices(reached, bore.to())));
        }
        return List.copyOf(all);
    }

    double omega(double frequency) {
        return 2 * Math.PI * frequency;
    }

    /** Length of the air column with what stands before it, m. */
    double length() {
        double before = input.mouthpiece() instanceof Mouthpiece.Cylinder tube ? tube.length() : 0;
        return before + bore.to() - bore.from();
    }

    Matrix matrix(Rung rung, double omega, boolean[] open) {
        return switch (rung) {
            case Stretch stretch -> stretch.matrix(input.air(), omega, input.losses());
            case Branch branch -> branch.matrix(input.air(), omega, input.losses(), open[branch.hole()]);
            case Pinhole leak -> leak.matrix(input.air(), omega, input.losses());
        };
    }

    Complex bell(double omega) {
        return Radiation.bell(input.air(), omega, bellRadius, input.bell());
    }

    /** Admittance at the outer end of the mouthpiece when the small end of the bore shows {@code p} and {@code u}. */
    Complex mouth(double omega, Complex p, Complex u) {
        return switch (input.mouthpiece()) {
            case Mouthpiece.Cavity cavity ->
                u.over(p)
                        .plus(Complex.imaginary(
                                omega * cavity.volume() / input.air().stiffness()));
            case Mouthpiece.Cylinder tube -> throughTube(tube, omega, p, u);
        };
    }

    private Complex throughTube(Mouthpiece.Cylinder tube, double omega, Complex p, Complex u) {
        Matrix m = tube(tube, omega);
        Complex pressure = m.a().times(p).plus(m.b().times(u));
        Complex flow = m.c().times(p).plus(m.d().times(u));
        return flow.over(pressure)
                .plus(Complex.imaginary(omega * tube.reed() / input.air().stiffness()));
    }

    /** Pressure at the small end of the bore over that at the outer end of the mouthpiece. */
    Complex carried(double omega, Complex p, Complex u) {
        if (input.mouthpiece() instanceof Mouthpiece.Cylinder tube) {
            Matrix m = tube(tube, omega);
            return p.over(m.a().times(p).plus(m.b().times(u)));
        }
        return Complex.ONE;
    }

    private Matrix tube(Mouthpiece.Cylinder tube, double omega) {
        TubeWave wave = TubeWave.of(input.air(), omega, tube.radius(), input.losses());
        return Matrix.cone(wave, tube.radius(), tube.radius(), tube.length());
    }

    boolean[] states(List<Integer> open) {
        boolean[] states = new boolean[input.holes().size()];
        open.forEach(hole -> states[hole] = true);
        return states;
    }
}
