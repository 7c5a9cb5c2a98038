package hornwright.desk.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class AirReckonTest {
    private static final Engine AIR = new AirReckon();
    private static final String KEEFE = "'air': {'model': 'keefe'}, ";
    private static final String CONE =
            "'bore': [{'at_mm': 0, 'diameter_mm': 11.2}, {'at_mm': 1000, 'diameter_mm': 67.2}], ";
    private static final String HOLE = "'holes': [{'id': 'h', 'at_mm': 770, 'diameter_mm': 31, 'chimney_mm': 4,"
            + " 'rimWall_mm': 0.8, 'pad': {'diameter_mm': 36, 'height_mm': 7}}], ";
    private static final String SHUT = "'fingerings': [{'id': 'low', 'open': []}]";
    private static final String OPEN = "'fingerings': [{'id': 'one', 'open': ['h']}]";

    /** 141.251 and 283.563 Hz were reckoned by an independent script for this cone. */
    @Test
    void a_cone_with_its_mouthpiece_answers_with_ascending_peaks() {
        JsonNode out = Asked.out(AIR, "{" + KEEFE + CONE + "'mouthpiece': {'volume_mm3': 6568}, " + SHUT + "}");
        JsonNode peaks = out.at("/fingerings/0/peaks");
        assertThat(peaks).hasSize(3);
        assertThat(peaks.at("/0/frequency_Hz").doubleValue()).isCloseTo(141.251, within(0.01));
        assertThat(peaks.at("/1/frequency_Hz").doubleValue()).isCloseTo(283.563, within(0.01));
        assertThat(peaks.at("/0/quality").isNumber()).isTrue();
        assertThat(out.at("/fingerings/0/soft_Hz").doubleValue()).isCloseTo(141.3, within(1.0));
        assertThat(out.at("/fingerings/0/loud_Hz").isNumber()).isTrue();
        assertThat(out.at("/fingerings/0/sensitivity").isNull()).isTrue();
        assertThat(out.at("/fingerings/0/curve").isNull()).isTrue();
    }

    @Test
    void defaults_are_those_of_the_contract() {
        String plain = "{" + CONE + HOLE + OPEN + "}";
        String told = "{'air': {'temperature_degC': 26.85, 'model': 'chaigne-kergomard'}, " + CONE
                + "'bell': {'end': 'unflanged', 'extra_mm': 0}, "
                + HOLE.replace("'height_mm': 7", "'height_mm': 7, 'protrusion_mm': 0")
                + "'fingerings': [{'id': 'one', 'open': ['h'], 'peak': 1}], 'leaks': [], 'losses': true,"
                + " 'interaction': false, 'modes': 3, 'want': ['peaks']}";
        assertThat(Asked.out(AIR, plain)).isEqualTo(Asked.out(AIR, told));
    }

    @Test
    void a_sensitivity_is_what_a_tenth_of_a_millimetre_does() {
        String asked = "{" + CONE + HOLE + "'want': ['sensitivity'], " + OPEN + "}";
        JsonNode out = Asked.out(AIR, asked);
        assertThat(out.at("/fingerings/0/sensitivity/0/hole").stringValue()).isEqualTo("h");
        assertThat(out.at("/fingerings/0/sensitivity/0/peak").intValue()).isEqualTo(1);
        double lower = Asked.number(
                AIR, asked.replace("'height_mm': 7", "'height_mm': 6.95"), "/fingerings/0/peaks/0/frequency_Hz");
        double higher = Asked.number(
                AIR, asked.replace("'height_mm': 7", "'height_mm': 7.05"), "/fingerings/0/peaks/0/frequency_Hz");
        assertThat(out.at("/fingerings/0/sensitivity/0/cents_per_mm").doubleValue())
                .isCloseTo(10 * 1200 * Math.log(higher / lower) / Math.log(2), within(2e-3));
    }

    @Test
    void a_curve_has_the_points_asked_for_and_its_top_at_the_peak() {
        JsonNode out = Asked.out(
                AIR,
                "{" + CONE + "'want': ['curve'], 'curve': {'from_Hz': 100, 'to_Hz': 200, 'points': 101}, " + SHUT
                        + "}");
        JsonNode curve = out.at("/fingerings/0/curve");
        assertThat(curve.get("frequency_Hz")).hasSize(101);
        int top = 0;
        for (int i = 1; i < 101; i++) {
            top = size(curve, i) > size(curve, top) ? i : top;
        }
        assertThat(curve.at("/frequency_Hz/" + top).doubleValue())
                .isCloseTo(out.at("/fingerings/0/peaks/0/frequency_Hz").doubleValue(), within(0.51));
    }

    private static double size(JsonNode curve, int i) {
        return Math.hypot(
                curve.at("/re/" + i).doubleValue(), curve.at("/im/" + i).doubleValue());
    }

    @Test
    void a_leak_a_cylinder_and_an_open_outside_each_change_the_answer() {
        double plain = Asked.number(AIR, "{" + CONE + HOLE + OPEN + "}", "/fingerings/0/peaks/0/frequency_Hz");
        for (String more : new String[] {
            "'leaks': [{'at_mm': 370, 'diameter_mm': 0.5, 'depth_mm': 1}], ",
            "'mouthpiece': {'cylinder': {'length_mm': 60, 'diameter_mm': 11.2}, 'reed_mm3': 2000}, ",
            "'interaction': true, ",
            "'losses': false, ",
            "'bell': {'end': 'flanged'}, "
        }) {
            double other =
                    Asked.number(AIR, "{" + more + CONE + HOLE + OPEN + "}", "/fingerings/0/peaks/0/frequency_Hz");
            assertThat(Math.abs(other - plain)).as(more).isGreaterThan(0.01);
        }
    }

    @Test
    void a_lossless_pipe_with_an_ideal_end_has_no_height_to_tell_but_its_frequencies() {
        JsonNode out = Asked.out(
                AIR,
                "{" + KEEFE + "'bore': [{'at_mm': 0, 'diameter_mm': 20}, {'at_mm': 500, 'diameter_mm': 20}],"
                        + " 'losses': false, 'bell': {'end': 'ideal'}, " + SHUT + "}");
        assertThat(out.at("/fingerings/0/peaks/1/frequency_Hz").doubleValue())
                .isCloseTo(3 * 347.23 / 4 / 0.5, within(1e-4));
        assertThat(out.at("/fingerings/0/peaks/1/quality").isNull()).isTrue();
        assertThat(out.at("/fingerings/0/peaks/1/magnitude_Pa_s_per_m3").isNull())
                .isTrue();
    }

    @Test
    void a_peak_that_is_not_there_is_told_and_leaves_its_fields_empty() {
        Answer answer = Asked.answer(AIR, "{" + CONE + "'fingerings': [{'id': 'low', 'open': [], 'peak': 400}]}");
        assertThat(answer.shortfall()).contains("\"low\" has no resonance number 400");
        assertThat(answer.out().node().at("/fingerings/0/soft_Hz").isNull()).isTrue();
        assertThat(answer.out().node().at("/fingerings/0/peaks")).hasSize(3);
    }

    @Test
    void impossible_geometry_is_told_at_its_place() {
        String hole = HOLE.replace("'at_mm': 770", "'at_mm': 1001");
        assertThat(Asked.faults(AIR, "{" + CONE + hole + OPEN + "}")).containsExactly("/holes/0/at_mm");
        hole = HOLE.replace("'diameter_mm': 31", "'diameter_mm': 55");
        assertThat(Asked.faults(AIR, "{" + CONE + hole + OPEN + "}"))
                .containsExactly("/holes/0/pad/diameter_mm", "/holes/0/diameter_mm");
        String back = CONE.replace("'at_mm': 1000", "'at_mm': 0");
        assertThat(Asked.faults(AIR, "{" + back + HOLE + OPEN + "}")).containsExactly("/bore/1/at_mm");
        assertThat(Asked.faults(AIR, "{'bore': [{'at_mm': 0, 'diameter_mm': 9}], " + SHUT + "}"))
                .containsExactly("/bore");
        assertThat(Asked.faults(
                        AIR, "{" + CONE + "'leaks': [{'at_mm': 2000, 'diameter_mm': 1, 'depth_mm': 1}], " + SHUT + "}"))
                .containsExactly("/leaks/0/at_mm");
        hole = HOLE.replace("'height_mm': 7", "'height_mm': 7, 'protrusion_mm': 5");
        assertThat(Asked.faults(AIR, "{" + CONE + hole + OPEN + "}")).containsExactly("/holes/0/pad/protrusion_mm");
        hole = HOLE.replace("'height_mm': 7", "'height_mm': 0");
        assertThat(Asked.faults(AIR, "{" + CONE + hole + OPEN + "}")).containsExactly("/fingerings/0/open/0");
        assertThat(Asked.faults(AIR, "{" + CONE + hole + SHUT + "}")).isEmpty();
        hole = HOLE.replace("'at_mm': 770", "'at_mm': 1000");
        assertThat(Asked.faults(AIR, "{'interaction': true, " + CONE + hole + OPEN + "}"))
                .containsExactly("/holes/0/at_mm");
    }

    @Test
    void every_other_fault_is_told_at_its_place_and_all_at_once() {
        assertThat(Asked.faults(
                        AIR,
                        "{'air': {'temperature_degC': 400, 'model': 'martian'}, 'bell': {'end': 'round'}, " + CONE
                                + "'mouthpiece': {'volume_mm3': 1, 'reed_mm3': 5}, "
                                + "'fingerings': [{'id': 'a', 'open': ['x']}, {'id': 'a', 'open': [], 'peak': 0}],"
                                + " 'want': ['loudness'], 'modes': 1.5, 'curve': {'from_Hz': 5, 'to_Hz': 4}}"))
                .containsExactlyInAnyOrder(
                        "/air/temperature_degC",
                        "/air/model",
                        "/bell/end",
                        "/mouthpiece/reed_mm3",
                        "/fingerings/0/open/0",
                        "/fingerings/1/id",
                        "/fingerings/1/peak",
                        "/want/0",
                        "/modes",
                        "/curve/to_Hz");
        assertThat(Asked.faults(AIR, "{}")).contains("/bore", "/fingerings");
        assertThat(Asked.faults(AIR, "{" + CONE + "'mouthpiece': {}, " + SHUT + "}"))
                .containsExactly("/mouthpiece");
    }
}
