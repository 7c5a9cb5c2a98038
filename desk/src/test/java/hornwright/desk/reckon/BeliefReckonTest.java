package hornwright.desk.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class BeliefReckonTest {
    private static final Engine BELIEF = new BeliefReckon();

    private static String eight(String tail) {
        StringBuilder seen = new StringBuilder();
        for (int i = 0; i < 8; i++) {
            seen.append(i == 0 ? "" : ",")
                    .append("{'serial': " + (1000 + 10 * i) + ", 'material': '" + (i < 4 ? "felt" : "cork") + "'}");
        }
        return "{'observations': [" + seen + "], 'materials': ['felt', 'cork'], 'prior': 1, 'change': 0.1" + tail + "}";
    }

    /** Sum over all 2^7 segmentations by brute force, apart from this program. */
    @Test
    void eight_horns_agree_with_the_sum_over_all_segmentations() {
        JsonNode out = Asked.out(BELIEF, eight(", 'at': [1030, 1035, 1200]"));
        assertThat(out.get("log_evidence").doubleValue()).isCloseTo(Math.log(5.824179725e-3), within(1e-9));
        assertThat(out.at("/changes/1").doubleValue()).isCloseTo(0.607592, within(1e-6));
        assertThat(out.get("changes")).hasSize(8);
        assertThat(out.at("/change_after/3/serial").toString()).isEqualTo("1030");
        assertThat(out.at("/change_after/3/probability").doubleValue()).isCloseTo(0.540118, within(1e-6));
        assertThat(out.at("/best/0").toString())
                .isEqualTo("{\"from\":1000,\"to\":1030,\"counts\":{\"felt\":4.0,\"cork\":0.0}}");
        assertThat(out.at("/at/0/standing").stringValue()).isEqualTo("observed");
        assertThat(out.at("/at/1/standing").stringValue()).isEqualTo("interpolated");
        assertThat(out.at("/at/1/probabilities/felt").doubleValue()).isCloseTo(0.5, within(1e-9));
        assertThat(out.at("/at/2/standing").stringValue()).isEqualTo("extrapolated");
    }

    @Test
    void a_change_that_is_certain_or_impossible_is_answered_too() {
        assertThat(Asked.number(BELIEF, eight("").replace("0.1", "0"), "/changes/0"))
                .isEqualTo(1);
        assertThat(Asked.number(BELIEF, eight("").replace("0.1", "1"), "/changes/7"))
                .isEqualTo(1);
    }

    @Test
    void every_fault_is_told_at_its_place() {
        assertThat(Asked.faults(BELIEF, "{}")).containsExactly("/materials", "/observations", "/prior", "/change");
        assertThat(Asked.faults(
                        BELIEF,
                        "{'observations': [{'serial': 1.5, 'material': 'wax', 'weight': 2}], 'materials': ['felt', 'felt'],"
                                + " 'prior': 0, 'change': 1.5, 'at': [0.5]}"))
                .containsExactly(
                        "/materials/1",
                        "/observations/0/serial",
                        "/observations/0/material",
                        "/observations/0/weight",
                        "/prior",
                        "/change",
                        "/at/0");
    }
}
