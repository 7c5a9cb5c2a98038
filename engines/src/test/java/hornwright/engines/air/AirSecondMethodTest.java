package hornwright.engines.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.air.AirInput.Mouthpiece;
import hornwright.engines.air.AirResult.Peak;
import hornwright.engines.air.Rung.Branch;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The same horns by other ways: the line equations integrated step by step, and a plain dense grid. */
class AirSecondMethodTest {
    /** Pressure and flow along the bore by dp/dx = -Z U, dU/dx = -Y p and Runge-Kutta, from the bell to the mouth. */
    private static Complex stepped(AirInput in, double frequency, double stepLength) {
        double omega = 2 * Math.PI * frequency;
        Ladder ladder = new Ladder(in);
        boolean[] open = ladder.states(in.fingerings().getFirst().open());
        List<Branch> branches = new ArrayList<>();
        ladder.rungs.forEach(rung -> {
            if (rung instanceof Branch branch) {
                branches.add(branch);
            }
        });
        Complex[] v = {Radiation.bell(in.air(), omega, in.bore().getLast().radius(), in.bell()), Complex.ONE};
        double here = ladder.bore.to();
        for (Branch branch : branches.reversed()) {
            double at = in.holes().get(branch.hole()).at();
            run(in, ladder.bore, omega, v, here, at, stepLength);
            HoleCircuit t = branch.circuit(in.air(), omega, in.losses(), open[branch.hole()]);
            v[0] = v[0].plus(t.half().times(v[1]));
            v[1] = v[1].plus(v[0].over(t.branch()));
            v[0] = v[0].plus(t.half().times(v[1]));
            here = at;
        }
        run(in, ladder.bore, omega, v, here, ladder.bore.from(), stepLength);
        Complex compliance = Complex.imaginary(omega
                * ((Mouthpiece.Cavity) in.mouthpiece()).volume()
                / in.air().stiffness());
        return v[1].over(v[0]).plus(compliance);
    }

    private static void run(
            AirInput in, Bore bore, double omega, Complex[] v, double from, double to, double stepLength) {
        double at = from;
        while (at > to + 1e-12) {
            double next = to;
            for (AirInput.BorePoint point : in.bore()) {
                if (point.at() < at - 1e-12 && point.at() > next) {
                    next = point.at();
                }
            }
            int steps = (int) Math.ceil((at - next) / stepLength);
            double dx = (at - next) / steps;
            for (int i = 0; i < steps; i++) {
                rungeKutta(in, bore, omega, v, at - i * dx, dx);
            }
            at = next;
        }
    }

    private static void rungeKutta(AirInput in, Bore bore, double omega, Complex[] v, double x, double dx) {
        Complex[] k1 = slope(in, bore, omega, v, x);
        Complex[] k2 = slope(in, bore, omega, moved(v, k1, dx / 2), x - dx / 2);
        Complex[] k3 = slope(in, bore, omega, moved(v, k2, dx / 2), x - dx / 2);
        Complex[] k4 = slope(in, bore, omega, moved(v, k3, dx), x - dx);
        for (int i = 0; i < 2; i++) {
            Complex sum = k1[i].plus(k2[i].times(2)).plus(k3[i].times(2)).plus(k4[i]);
            v[i] = v[i].plus(sum.times(dx / 6));
        }
    }

    private static Complex[] moved(Complex[] v, Complex[] k, double by) {
        return new Complex[] {v[0].plus(k[0].times(by)), v[1].plus(k[1].times(by))};
    }

    /** Growth towards the mouth; friction and heat by power series of the Bessel functions. */
    private static Complex[] slope(AirInput in, Bore bore, double omega, Complex[] v, double x) {
        double a = bore.radiusAt(x);
        double area = Math.PI * a * a;
        Air air = in.air();
        Complex series = Complex.imaginary(omega * air.density() / area);
        Complex shunt = Complex.imaginary(omega * area / air.stiffness());
        if (in.losses()) {
            double r = a * Math.sqrt(omega * air.density() / air.viscosity());
            series = series.over(Complex.ONE.minus(TubeWave.boundary(r)));
            shunt = shunt.times(TubeWave.boundary(r * air.prandtlRoot())
                    .times(air.gamma() - 1)
                    .plus(1));
        }
        return new Complex[] {series.times(v[1]), shunt.times(v[0])};
    }

    @Test
    void the_line_equations_integrated_step_by_step_give_the_same_impedance() {
        for (int first : new int[] {1, 4, 7}) {
            AirInput horn = Horns.six(first);
            Chain chain =
                    new Chain(new Ladder(horn), horn.fingerings().getFirst().open());
            for (double f : new double[] {90, 141, 283, 700, 1300}) {
                Complex expected = stepped(horn, f, 0.5e-3);
                assertThat(chain.admittance(f).minus(expected).magnitude() / expected.magnitude())
                        .as("%s Hz, open from %s", f, first)
                        .isLessThan(2e-3);
            }
        }
    }

    @Test
    void resonances_of_the_stepped_solution_lie_within_a_twentieth_of_a_cent() {
        for (int first = 1; first <= 7; first++) {
            AirInput horn = Horns.six(first);
            for (Peak peak : Horns.peaks(horn).subList(0, 2)) {
                double best = top(f -> stepped(horn, f, 1e-3).squared(), peak.frequency());
                assertThat(Horns.cents(peak.frequency(), best)).isCloseTo(0, within(0.05));
            }
        }
    }

    /** Least of a function near {@code about}, by golden section on half a per cent each side. */
    private static double top(java.util.function.DoubleUnaryOperator f, double about) {
        double golden = (Math.sqrt(5) - 1) / 2;
        double a = about * 0.995;
        double b = about * 1.005;
        while (b - a > 1e-4) {
            double c = b - golden * (b - a);
            double d = a + golden * (b - a);
            if (f.applyAsDouble(c) < f.applyAsDouble(d)) {
                b = d;
            } else {
                a = c;
            }
        }
        return (a + b) / 2;
    }

    @Test
    void the_wall_layer_function_is_that_of_the_power_series() {
        for (double r = 0.05; r < 14; r += 0.37) {
            Complex series = besselRatio(r);
            assertThat(TubeWave.boundary(r).minus(series).magnitude() / series.magnitude())
                    .as("r = %s", r)
                    .isLessThan(1e-7 + (r < 12 ? 0 : 1e-6));
        }
    }

    /** 2 I1(W)/(W I0(W)) by power series in W²/4 = j r²/4. */
    private static Complex besselRatio(double r) {
        Complex quarter = Complex.imaginary(r * r / 4);
        Complex i0 = Complex.ONE;
        Complex i1 = Complex.ONE;
        Complex term = Complex.ONE;
        for (int m = 1; m < 120; m++) {
            term = term.times(quarter).times(1.0 / ((double) m * m));
            i0 = i0.plus(term);
            i1 = i1.plus(term.times(1.0 / (m + 1)));
        }
        return i1.over(i0);
    }

    @Test
    void a_dense_grid_finds_the_same_peaks_and_qualities_and_no_others() {
        for (long seed = 0; seed < 12; seed++) {
            AirInput horn = AirPropertyTest.random(seed);
            Chain chain =
                    new Chain(new Ladder(horn), horn.fingerings().getFirst().open());
            List<Peak> peaks = Horns.peaks(horn);
            List<Double> dense = densePeaks(chain, 20, peaks.getLast().frequency() + 1);
            assertThat(dense).hasSameSizeAs(peaks);
            for (int i = 0; i < peaks.size(); i++) {
                Peak peak = peaks.get(i);
                assertThat(peak.frequency()).isCloseTo(dense.get(i), within(0.06));
                assertThat(peak.magnitude())
                        .isCloseTo(1 / chain.admittance(peak.frequency()).magnitude(), within(1e-3));
                for (double off : new double[] {-1e-3, 1e-3}) {
                    assertThat(1 / chain.admittance(peak.frequency() + off).magnitude())
                            .isLessThan(peak.magnitude());
                }
                Double quality = peak.quality();
                if (quality != null) {
                    assertThat(quality).isCloseTo(denseQuality(chain, peak, quality), within(0.02 * quality));
                }
            }
        }
    }

    private static List<Double> densePeaks(Chain chain, double from, double to) {
        List<Double> found = new ArrayList<>();
        double step = 0.1;
        double two = chain.admittance(from).squared();
        double one = chain.admittance(from + step).squared();
        for (double f = from + 2 * step; f < to; f += step) {
            double now = chain.admittance(f).squared();
            if (one < two && one <= now) {
                found.add(f - step);
            }
            two = one;
            one = now;
        }
        return found;
    }

    private static double denseQuality(Chain chain, Peak peak, double about) {
        double step = peak.frequency() / about / 2000;
        double half = peak.magnitude() / Math.sqrt(2);
        double low = peak.frequency();
        while (1 / chain.admittance(low).magnitude() > half) {
            low -= step;
        }
        double high = peak.frequency();
        while (1 / chain.admittance(high).magnitude() > half) {
            high += step;
        }
        return peak.frequency() / (high - low);
    }
}
