package hornwright.engines.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.Ref;
import hornwright.engines.air.AirInput.End;
import hornwright.engines.air.AirInput.Hole;
import hornwright.engines.air.AirInput.Mouthpiece.Cavity;
import hornwright.engines.air.AirInput.Mouthpiece.Cylinder;
import java.util.List;
import org.junit.jupiter.api.Test;

class AirPublishedTest {
    private static final double OMEGA = 2 * Math.PI * 440;

    @Test
    void both_models_of_air_give_their_published_values() {
        Ref ref = Ref.read("air/air");
        Air keefe = AirModel.KEEFE.at(20);
        ref.check("keefe_speed", keefe.speed(), 1);
        ref.check("keefe_density", keefe.density(), 1);
        ref.check("keefe_viscosity", keefe.viscosity(), 1);
        ref.check("keefe_prandtlRoot", keefe.prandtlRoot(), 1);
        Air other = AirModel.CHAIGNE_KERGOMARD.at(20);
        ref.check("ck_speed", other.speed(), 1);
        ref.check("ck_density", other.density(), 1);
        ref.check("ck_viscosity", other.viscosity(), 1);
        ref.check("ck_prandtlRoot", other.prandtlRoot(), 1);
    }

    @Test
    void a_narrow_pipe_loses_what_was_measured() {
        Ref ref = Ref.read("air/losses");
        for (double celsius : new double[] {20, 27}) {
            TubeWave wave = TubeWave.of(AirModel.KEEFE.at(celsius), 2 * Math.PI * 200, 3.9e-3, true);
            ref.check("pipe_1_per_m", wave.propagation().re(), 1);
        }
        TubeWave wave = TubeWave.of(AirModel.KEEFE.at(20), 2 * Math.PI * 200, 3.9e-3, true);
        ref.check("kirchhoff_1_per_m", wave.propagation().re(), 1);
    }

    @Test
    void propagation_and_impedance_are_those_of_zwikker_and_kosten() {
        Ref ref = Ref.read("air/losses");
        for (String name : List.of("f100_a5", "f440_a10", "f1000_a10", "f1000_a3")) {
            double f = Double.parseDouble(name.substring(1, name.indexOf('_')));
            double a = Double.parseDouble(name.substring(name.indexOf('a') + 1)) / 1e3;
            TubeWave wave = TubeWave.of(Horns.KEEFE, 2 * Math.PI * f, a, true);
            Complex z = wave.specific().times(1 / (Math.PI * a * a));
            ref.check(name + "_reGamma", wave.propagation().re(), 1);
            ref.check(name + "_imGamma", wave.propagation().im(), 1);
            ref.check(name + "_reZ", z.re(), 1);
            ref.check(name + "_imZ", z.im(), 1);
        }
    }

    @Test
    void open_ends_reflect_as_published() {
        Ref ref = Ref.read("air/ends");
        ref.check("unflanged", length(End.UNFLANGED, 1e-3), 1);
        ref.check("flanged", length(End.FLANGED, 1e-3), 1);
        ref.check("reflection_0.5", Radiation.reflection(End.UNFLANGED, 0.5).magnitude(), 1);
        ref.check("length_0.5", length(End.UNFLANGED, 0.5), 1);
        ref.check(
                "flanged_reflection_0.1", Radiation.reflection(End.FLANGED, 0.1).magnitude(), 1);
        ref.check(
                "flanged_reflection_1.0", Radiation.reflection(End.FLANGED, 1.0).magnitude(), 1);
    }

    /** Length of an end over its radius, from the phase of R = -|R| e^{-2jkδ}. */
    private static double length(End end, double ka) {
        Complex r = Radiation.reflection(end, ka).negated();
        return -Math.atan2(r.im(), r.re()) / (2 * ka);
    }

    @Test
    void a_cylinder_rings_where_it_should() {
        Ref ref = Ref.read("air/cylinder");
        AirInput cylinder = Horns.tube(500, 10, 10, Horns.NOTHING, End.UNFLANGED);
        for (int n = 1; n <= 3; n++) {
            ref.check("lossless_" + n, Horns.peak(Horns.lossless(cylinder), n), 1);
            ref.check("lossy_" + n, Horns.peak(cylinder, n), 1);
        }
    }

    @Test
    void truncated_cones_have_their_closed_form() {
        Ref ref = Ref.read("air/closed-forms");
        double perRadian = Horns.KEEFE.speed() / (2 * Math.PI * 0.5);
        AirInput cone = Horns.lossless(Horns.tube(500, 5, 30, Horns.NOTHING, End.IDEAL));
        for (int n = 1; n <= 3; n++) {
            ref.check("cone_" + n, Horns.peak(cone, n), perRadian);
        }
        Cavity missing = new Cavity(Math.PI * 25e-6 * 0.1 / 3);
        AirInput filled = Horns.lossless(Horns.tube(500, 5, 30, missing, End.IDEAL));
        ref.check("octave_cents", Horns.cents(2 * Horns.peak(filled, 1), Horns.peak(filled, 2)), 1);
    }

    @Test
    void a_cylinder_before_a_cone_is_harmonic_only_while_it_is_narrow() {
        Ref ref = Ref.read("air/closed-forms");
        for (String ratio : List.of("0.2", "0.4")) {
            double r1 = 30 * Double.parseDouble(ratio);
            double apex = 500 * r1 / (30 - r1);
            Cylinder before = new Cylinder(apex / 3 / 1e3, r1 / 1e3, 0);
            AirInput horn = Horns.lossless(Horns.tube(500, r1, 30, before, End.IDEAL));
            ref.check("cylinderCone_" + ratio, Horns.peak(horn, 2) / Horns.peak(horn, 1), 1);
        }
    }

    @Test
    void the_matrix_of_a_cone_is_the_closed_form() {
        Ref ref = Ref.read("air/cone-matrix");
        Matrix m = Matrix.cone(TubeWave.of(Horns.KEEFE, OMEGA, 0.01, false), 0.005, 0.015, 0.5);
        ref.check("a", m.a().re(), 1);
        ref.check("b", m.b().im(), 1);
        ref.check("c", m.c().im(), 1);
        ref.check("d", m.d().re(), 1);
        assertThat(m.determinant().minus(Complex.ONE).magnitude()).isLessThan(1e-12);
        Matrix sum = Matrix.UNIT;
        for (int i = 0; i < 200; i++) {
            double r1 = 0.005 + 0.01 * i / 200;
            double r2 = 0.005 + 0.01 * (i + 1) / 200;
            TubeWave wave = TubeWave.of(Horns.KEEFE, OMEGA, (r1 + r2) / 2, true);
            sum = sum.times(Matrix.cone(wave, r1, r2, 0.0025));
        }
        ref.check("lossyReA", sum.a().re(), 1);
        ref.check("lossyImA", sum.a().im(), 1);
        ref.check("lossyReB", sum.b().re(), 1);
        ref.check("lossyImB", sum.b().im(), 1);
        ref.check("lossyReC", sum.c().re(), 1);
        ref.check("lossyImC", sum.c().im(), 1);
        ref.check("lossyReD", sum.d().re(), 1);
        ref.check("lossyImD", sum.d().im(), 1);
        assertThat(sum.determinant().minus(Complex.ONE).magnitude()).isLessThan(1e-12);
    }

    @Test
    void a_hole_has_its_published_lengths_and_matrices() {
        Ref ref = Ref.read("air/hole");
        ref.check("inner_narrow", HoleShape.inner(1, 0), 1);
        ref.check("inner_wide", HoleShape.inner(1, 1), 1);
        HoleShape deep = HoleShape.of(new Hole(0, 1, 5, 0, null), 1);
        ref.check("closedDeep", deep.closedSeries(), 1);
        HoleShape shape = HoleShape.of(Horns.hole(0, 6.65, 3, 0.665, null), 9.5e-3);
        Matrix closed = HoleCircuit.closed(shape, Horns.KEEFE, OMEGA, true).matrix();
        ref.check("closedA", closed.a().re(), 1);
        ref.check("closedB", closed.b().im(), 1);
        ref.check("closedC", closed.c().im(), 1);
        Matrix open = HoleCircuit.open(shape, Horns.KEEFE, OMEGA, true).matrix();
        ref.check("openA", open.a().re(), 1);
        ref.check("openB", open.b().im(), 1);
        ref.check("openImC", open.c().im(), 1);
        ref.check("openReC", open.c().re(), 1);
    }

    @Test
    void a_pad_lengthens_its_hole_as_the_field_around_it_says() {
        Ref ref = Ref.read("air/pad");
        ref.check("h0.2", Radiation.pad(1, 0.1, 1.25, 0.2), 1);
        ref.check("h0.5", Radiation.pad(1, 0.1, 1.25, 0.5), 1);
        ref.check("h1", Radiation.pad(1, 0.1, 1.25, 1), 1);
        assertThat(Radiation.pad(1, 0.1, 1.25, 50)).isCloseTo(Radiation.rim(1, 0.1), within(0.02));
    }

    @Test
    void one_hole_in_a_cylinder_answers_to_its_pad() {
        Ref ref = Ref.read("air/one-hole");
        AirInput tube = Horns.tube(500, 9.5, 9.5, Horns.NOTHING, End.UNFLANGED);
        for (int h : new int[] {2, 4, 8}) {
            Hole hole = Horns.hole(350, 6.65, 3, 0.5, Horns.pad(1.2 * 6.65, h));
            ref.check("h" + h, Horns.peak(Horns.drilled(tube, List.of(hole), 0), 1), 1);
            ref.check("closed", Horns.peak(Horns.drilled(tube, List.of(hole)), 1), 1);
        }
        ref.check("none", Horns.peak(tube, 1), 1);
    }

    @Test
    void a_saxophone_like_cone_rings_where_it_should() {
        Ref ref = Ref.read("air/sax-cone");
        AirInput cone = Horns.modes(Horns.saxCone(), 5);
        for (int n = 1; n <= 5; n++) {
            ref.check("lossless_" + n, Horns.peak(Horns.lossless(cone), n), 1);
            ref.check("lossy_" + n, Horns.peak(cone, n), 1);
        }
        for (int n = 1; n <= 3; n++) {
            ref.check("bare_" + n, Horns.peak(cone.withMouthpiece(Horns.NOTHING), n), 1);
            ref.check("magnitude_" + n, Horns.peaks(cone).get(n - 1).magnitude(), 1);
        }
    }

    @Test
    void a_long_narrow_cone_needs_its_slices() {
        Ref ref = Ref.read("air/bassoon-cone");
        AirInput cone = Horns.tube(3000, 2.1, 23.45, Horns.NOTHING, End.IDEAL);
        for (int n = 1; n <= 3; n++) {
            ref.check("f" + n, Horns.peak(cone, n), 1);
        }
    }

    @Test
    void the_lowest_note_of_a_soprano_follows_from_its_printed_dimensions() {
        double slope = Math.tan(Math.toRadians(1.74));
        double r1 = 160 * slope;
        Cavity missing = new Cavity(Math.PI * r1 * r1 * 160 / 3 * 1e-9);
        AirInput soprano = Horns.tube(655, r1, (160 + 655) * slope, missing, End.UNFLANGED);
        Ref.read("air/soprano").check("lowest_Hz", Horns.peak(soprano, 1), 1);
    }

    @Test
    void open_holes_that_hear_each_other_sound_lower() {
        Ref ref = Ref.read("air/interaction");
        AirInput tube = Horns.tube(400, 9.5, 9.5, Horns.NOTHING, End.UNFLANGED);
        List<Hole> holes = List.of(bare(300), bare(330), bare(360));
        AirInput plain = Horns.drilled(tube, holes, 0, 1, 2);
        for (int n = 1; n <= 3; n++) {
            ref.check("plain_" + n, Horns.peak(plain, n), 1);
            ref.check("together_" + n, Horns.peak(Horns.together(plain), n), 1);
        }
    }

    private static Hole bare(double at) {
        return Horns.hole(at, 6.65, 3, 0.665, null);
    }
}
