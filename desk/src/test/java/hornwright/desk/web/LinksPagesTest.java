package hornwright.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.desk.use.OpenShop;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Regulation as a plain page without scripts. */
@Tag("slow")
final class LinksPagesTest extends ServedShop {
    private static final String FELT = "r%2FLINKED_GAP%2Fcup.d%2Fpressing+d=0.21"
            + "&r%2FLINKED_GAP%2Fcup.f-sharp%2Fpressing+d=0&r%2FLINKED_GAP%2Fcup.bis%2Fpressing+d=0";

    @SuppressWarnings("NullAway.Init")
    private String horn;

    LinksPagesTest() {
        super(OpenShop.FirstRun.EMPTY);
    }

    @BeforeEach
    void start() throws Exception {
        horn = newAlto();
    }

    private String page() throws IOException {
        return wire.get(horn + "/links").body();
    }

    private String seq() throws IOException {
        Matcher seq = Pattern.compile("id=\"seq\" value=\"(\\d+)\"").matcher(page());
        assertThat(seq.find()).isTrue();
        return seq.group(1);
    }

    private Wire.Answer post(String verb, String fields) throws IOException {
        return wire.post(horn + "/links/" + verb, "key=" + verb + "-" + seq() + "&seq=" + seq() + "&" + fields);
    }

    @Test
    void before_anybody_has_felt_it_asks_and_proposes_nothing() throws IOException {
        assertThat(page())
                .contains("Nobody has felt yet")
                .doesNotContain("Add or take, all at once")
                .contains("Cut to plan, not yet regulated");
    }

    @Test
    void readings_become_a_proposal_the_proposal_work_and_work_is_done() throws IOException {
        assertThat(post("readings", FELT).status()).isEqualTo(303);
        assertThat(page()).contains("Felt at 3 of 24 spots").contains("Add or take, all at once");
        assertThat(post("accept", "").status()).isEqualTo(303);
        assertThat(page()).contains("Done: D on F♯");
        assertThat(post("done", "link=link.d-to-f-sharp").status()).isEqualTo(303);
        assertThat(page()).doesNotContain("Done: D on F♯").contains("no longer counts, feel again");
    }

    private String work() throws IOException {
        return wire.get(horn + "/work").body();
    }

    @Test
    void what_was_accepted_is_work_with_its_amount_until_it_is_done_or_left() throws IOException {
        post("readings", FELT);
        post("accept", "");
        assertThat(work())
                .contains("Contacts to alter, all in one round", "by the leaf under the linked cups")
                .contains("Regulate where D closes F♯: take 0.");
        post("done", "link=link.d-to-f-sharp&act=drop&back=work");
        assertThat(work()).doesNotContain("Contacts to alter").doesNotContain("closes F♯: take 0.");
        assertThat(page()).contains("Add or take, all at once");
    }

    @Test
    void done_on_the_work_page_ends_the_readings_it_rested_on() throws IOException {
        post("readings", FELT);
        post("accept", "");
        String seq = seq();
        Wire.Answer done = wire.post(horn + "/work", "key=w&seq=" + seq + "&step=regulate.d-to-f-sharp&act=done");
        assertThat(done.status()).isEqualTo(303);
        assertThat(work()).doesNotContain("Contacts to alter");
        assertThat(page()).contains("no longer counts, feel again");
    }

    @Test
    void felt_again_after_it_was_accepted_it_is_to_be_settled_anew() throws IOException {
        post("readings", FELT);
        post("accept", "");
        assertThat(work()).doesNotContain("settle it anew");
        post("readings", "r%2FLINKED_GAP%2Fcup.d%2Fpressing+d=0.11");
        assertThat(work()).contains("felt again with D pressed: settle it anew");
        post("accept", "again=1");
        assertThat(work()).doesNotContain("settle it anew").contains("Contacts to alter");
    }

    @Test
    void every_number_opens_its_because() throws IOException {
        post("readings", FELT);
        Matcher why = Pattern.compile("href=\"(/horn/[^\"]*because[^\"]*)\"").matcher(page());
        int opened = 0;
        while (why.find()) {
            assertThat(wire.get(why.group(1).replace("&amp;", "&")).status())
                    .as(why.group(1))
                    .isEqualTo(200);
            opened++;
        }
        assertThat(opened).isGreaterThan(10);
    }

    @Test
    void it_says_where_new_material_comes_to_and_the_hand_over_proposes_that_day() throws IOException {
        assertThat(page())
                .contains("After it has packed down", "What each contact loses", "How much higher each cup stands")
                .doesNotContain("nothing moves");
        String day = LocalDate.now(ZoneId.systemDefault()).plusDays(30).toString();
        assertThat(wire.get(horn + "/handover").body())
                .contains("value=\"" + day + "\"", "Nothing is written down as laid yet");
    }

    @Test
    void what_is_not_understood_stays_in_its_field_with_a_sentence() throws IOException {
        Wire.Answer answer = post("readings", "r%2FLINKED_GAP%2Fcup.d%2Fpressing+d=tight");
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("Not understood yet").contains("value=\"tight\"");
    }

    @Test
    void what_is_no_longer_settled_cannot_be_done() throws IOException {
        assertThat(post("done", "link=link.d-to-f-sharp").status()).isEqualTo(409);
        assertThat(post("accept", "").status()).isEqualTo(409);
    }

    @Test
    void the_sheet_for_the_wall_prints_on_either_paper() throws IOException {
        post("readings", FELT);
        for (String size : new String[] {"", "?size=letter"}) {
            Wire.Answer sheet = wire.get(horn + "/links/sheet.pdf" + size);
            assertThat(sheet.header("Content-Type")).isEqualTo("application/pdf");
            assertThat(sheet.body()).startsWith("%PDF");
        }
    }
}
