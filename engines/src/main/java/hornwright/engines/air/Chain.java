package hornwright.engines.air;

import hornwright.engines.air.Rung.Branch;
import java.util.List;

/** A fingering whose holes do not hear each other: one pass from the bell to the mouthpiece. */
final class Chain implements Response {
    private final Ladder ladder;
    private final boolean[] states;
    private final List<Integer> open;

    Chain(Ladder ladder, List<Integer> open) {
        this.ladder = ladder;
        this.open = open;
        states = ladder.states(open);
    }

    @Override
    public Complex admittance(double frequency) {
        double omega = ladder.omega(frequency);
        Complex p = ladder.bell(omega);
        Complex u = Complex.ONE;
        for (int i = ladder.rungs.size() - 1; i >= 0; i--) {
            Matrix m = ladder.matrix(ladder.rungs.get(i), omega, states);
            Complex pressure = m.a().times(p).plus(m.b().times(u));
            u = m.c().times(p).plus(m.d().times(u));
            p = pressure;
        }
        return ladder.mouth(omega, p, u);
    }

    /**
     * The network is reciprocal, so an impedance Z that carries the flow v moves the input admittance by
     * -(v/p_in)² dZ: the pass that finds the admittance has found every sensitivity.
     */
    @Override
    public Complex[] slopes(double frequency) {
        double omega = ladder.omega(frequency);
        Complex[] flows = new Complex[states.length];
        Complex p = ladder.bell(omega);
        Complex u = Complex.ONE;
        for (int i = ladder.rungs.size() - 1; i >= 0; i--) {
            Rung rung = ladder.rungs.get(i);
            Matrix m;
            if (rung instanceof Branch branch && states[branch.hole()]) {
                HoleCircuit circuit = branch.circuit(ladder.input.air(), omega, ladder.input.losses(), true);
                Complex middle = p.plus(circuit.half().times(u));
                flows[branch.hole()] = middle.over(circuit.branch()).times(circuit.share());
                m = circuit.matrix();
            } else {
                m = ladder.matrix(rung, omega, states);
            }
            Complex pressure = m.a().times(p).plus(m.b().times(u));
            u = m.c().times(p).plus(m.d().times(u));
            p = pressure;
        }
        Complex scale = ladder.carried(omega, p, u).over(p);
        return slopes(ladder, omega, open, flows, scale);
    }

    /** Turns flows through the open holes into changes of the input admittance per pad height. */
    static Complex[] slopes(Ladder ladder, double omega, List<Integer> open, Complex[] flows, Complex scale) {
        Complex[] slopes = new Complex[open.size()];
        for (Rung rung : ladder.rungs) {
            if (rung instanceof Branch branch && open.contains(branch.hole())) {
                HoleShape shape = branch.shape();
                double k = omega / ladder.input.air().speed();
                Complex outside = HoleCircuit.inertance(shape.outerSlope(), k, ladder.input.air(), shape.radius());
                Complex flow = flows[branch.hole()].times(scale);
                slopes[open.indexOf(branch.hole())] =
                        flow.times(flow).times(outside).negated();
            }
        }
        return slopes;
    }
}
