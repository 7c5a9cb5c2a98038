package hornwright.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.desk.use.OpenShop;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Readings lapse aloud: before a stage is said, when it is said, and beside the value that counts no longer. */
class StageLapseTest extends ServedShop {
    private String horn;

    StageLapseTest() {
        super(OpenShop.FirstRun.EMPTY);
    }

    @BeforeEach
    void start() throws Exception {
        horn = newAlto();
    }

    @Test
    void a_stage_says_which_readings_it_voids_before_and_after_and_the_sheet_says_so_too() throws Exception {
        say("fit", "r%2FPLAY%2Fd%2Fat+the+hinge+tube=clear%2C+none");
        say("fit", "r%2FPLAY%2Fe%2Fat+the+hinge+tube=none%2C+none");
        assertThat(wire.get(horn + "/work").body()).contains("What the next stages void", "play of D</dd>");
        String said =
                wire.post(horn + "/stage", "stage=KEYS_FITTED&seq=" + seq()).header("Location");
        assertThat(wire.get(said).body())
                .contains("No longer counts: play of D.</p>", "<li>play: D</li>")
                .contains("nothing to do at 1");
        String fit = wire.get(horn + "/fit").body();
        assertThat(fit).contains("counts no longer: taken at arrival; since then: keys fitted");
        assertThat(fit).contains("1 was read before and counts no longer.");
    }

    private void say(String sheet, String field) throws Exception {
        assertThat(wire.post(horn + "/sheet/" + sheet, field + "&sheet=" + sheet + "&seq=" + seq())
                        .status())
                .isEqualTo(303);
    }

    private long seq() {
        return shop.job(horn.replace("/horn/", "")).seq();
    }
}
