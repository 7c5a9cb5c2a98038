package hornwright.engines.air;

import hornwright.engines.air.Rung.Branch;
import java.util.ArrayList;
import java.util.List;

/**
 * A fingering whose open holes and bell hear each other outside, as free monopoles (after Lefebvre, Scavone and Kergomard,
 * Acta Acustica united with Acustica 99, 2013).
 *
 * <p>The flows through the openings are the unknowns: the pressure in the bore at every open hole follows from them through
 * the chimney, and the flows at every such node add up to nothing.
 */
final class Outdoors implements Response {
    private final Ladder ladder;
    private final boolean[] states;
    private final List<Integer> open;
    private final List<Branch> nodes = new ArrayList<>();
    private final double[] places;
    private final double hearing;

    Outdoors(Ladder ladder, List<Integer> open) {
        this(ladder, open, 1);
    }

    /** With a hearing of 0 instead of 1 this is the plain chain, which a test makes use of. */
    Outdoors(Ladder ladder, List<Integer> open, double hearing) {
        this.ladder = ladder;
        this.hearing = hearing;
        this.open = open;
        states = ladder.states(open);
        for (Rung rung : ladder.rungs) {
            if (rung instanceof Branch branch && states[branch.hole()]) {
                nodes.add(branch);
            }
        }
        places = new double[nodes.size() + 1];
        for (int i = 0; i < nodes.size(); i++) {
            places[i] = ladder.input.holes().get(nodes.get(i).hole()).at();
        }
        places[nodes.size()] = ladder.bore.to();
    }

    /** Flows out of the openings, the bell last, for pressure 1 at the small end, and the flow in there. */
    private record Flows(Complex[] out, Complex in) {}

    @Override
    public Complex admittance(double frequency) {
        double omega = ladder.omega(frequency);
        return ladder.mouth(omega, Complex.ONE, flows(omega).in());
    }

    @Override
    public Complex[] slopes(double frequency) {
        double omega = ladder.omega(frequency);
        Flows flows = flows(omega);
        Complex[] byHole = new Complex[states.length];
        for (int i = 0; i < nodes.size(); i++) {
            byHole[nodes.get(i).hole()] = flows.out()[i];
        }
        return Chain.slopes(ladder, omega, open, byHole, ladder.carried(omega, Complex.ONE, flows.in()));
    }

    private Flows flows(double omega) {
        int n = nodes.size();
        List<Matrix> pieces = pieces(omega);
        Complex[][] outside = outside(omega);
        Complex[][] pressure = new Complex[n + 1][];
        Complex[][] rows = new Complex[n + 1][];
        for (int i = 0; i < n; i++) {
            Matrix chimney = HoleCircuit.chimney(nodes.get(i).shape(), air(), omega, ladder.input.losses());
            rows[i] = mixed(chimney.c(), outside[i], chimney.d(), i);
            Complex inside = inside(i, omega);
            Complex a = chimney.a().plus(inside.times(chimney.c()));
            Complex b = chimney.b().plus(inside.times(chimney.d()));
            pressure[i] = mixed(a, outside[i], b, i);
        }
        pressure[n] = outside[n];
        rows[n] = mixed(Complex.ZERO, outside[n], Complex.ONE.negated(), n);
        for (int i = 0; i <= n; i++) {
            Matrix left = pieces.get(i);
            Complex here = left.a().over(left.b());
            if (i < n) {
                add(
                        rows[i],
                        pressure[i],
                        here.plus(pieces.get(i + 1).d().over(pieces.get(i + 1).b())));
                add(rows[i], pressure[i + 1], pieces.get(i + 1).b().inverse().negated());
            } else {
                add(rows[i], pressure[i], here.negated());
            }
            if (i > 0) {
                Complex link = left.b().inverse();
                add(rows[i], pressure[i - 1], i < n ? link.negated() : link);
            }
        }
        Matrix first = pieces.getFirst();
        Complex[] right = new Complex[n + 1];
        java.util.Arrays.fill(right, Complex.ZERO);
        right[0] = first.b().inverse();
        Complex[] out = Elimination.solve(rows, right);
        Complex atFirst = Complex.ZERO;
        for (int m = 0; m <= n; m++) {
            atFirst = atFirst.plus(pressure[0][m].times(out[m]));
        }
        return new Flows(out, first.d().minus(atFirst).over(first.b()));
    }

    private Air air() {
        return ladder.input.air();
    }

    private Complex inside(int node, double omega) {
        HoleShape shape = nodes.get(node).shape();
        return HoleCircuit.inertance(shape.inner(), omega / air().speed(), air(), shape.radius());
    }

    /** The bore between consecutive nodes, with half the series part of the open hole at each node. */
    private List<Matrix> pieces(double omega) {
        List<Matrix> pieces = new ArrayList<>();
        Matrix piece = Matrix.UNIT;
        for (Rung rung : ladder.rungs) {
            if (rung instanceof Branch branch && states[branch.hole()]) {
                HoleShape shape = branch.shape();
                double k = omega / air().speed();
                Matrix half =
                        Matrix.series(HoleCircuit.inertance(shape.openSeries() / 2, k, air(), shape.boreRadius()));
                pieces.add(piece.times(half));
                piece = half;
            } else {
                piece = piece.times(ladder.matrix(rung, omega, states));
            }
        }
        pieces.add(piece);
        return pieces;
    }

    /** Pressure before each opening for unit flow out of each, the bell last. */
    private Complex[][] outside(double omega) {
        int n = nodes.size();
        double k = omega / air().speed();
        Complex[][] z = new Complex[n + 1][n + 1];
        for (int i = 0; i <= n; i++) {
            for (int m = 0; m <= n; m++) {
                z[i][m] = i == m ? own(i, omega) : heard(Math.abs(places[i] - places[m]), omega, k);
            }
        }
        if (ladder.input.bell().end() == AirInput.End.IDEAL) {
            for (int i = 0; i <= n; i++) {
                z[i][n] = Complex.ZERO;
                z[n][i] = Complex.ZERO;
            }
        }
        return z;
    }

    private Complex own(int opening, double omega) {
        return opening == nodes.size()
                ? ladder.bell(omega)
                : HoleCircuit.outside(nodes.get(opening).shape(), air(), omega);
    }

    private Complex heard(double distance, double omega, double k) {
        double size = hearing * omega * air().density() / (4 * Math.PI * distance);
        return Complex.exp(Complex.imaginary(-k * distance)).turned().times(size);
    }

    private static Complex[] mixed(Complex factor, Complex[] row, Complex own, int at) {
        Complex[] mixed = new Complex[row.length];
        for (int m = 0; m < row.length; m++) {
            mixed[m] = factor.times(row[m]);
        }
        mixed[at] = mixed[at].plus(own);
        return mixed;
    }

    private static void add(Complex[] to, Complex[] row, Complex factor) {
        for (int m = 0; m < row.length; m++) {
            to[m] = to[m].plus(factor.times(row[m]));
        }
    }
}
