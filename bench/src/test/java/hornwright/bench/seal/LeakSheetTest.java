package hornwright.bench.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornwright.bench.horn.ById;
import hornwright.bench.seal.LeakSheet.Found;
import hornwright.bench.seal.LeakSheet.Verdict;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class LeakSheetTest {
    private static final ById<LeakSite> SITES = ById.of(List.of(
            new LeakSite("tenon", "neck tenon", LeakSite.Way.TENON), new LeakSite("pad.a", "A pad", LeakSite.Way.PAD)));

    @Test
    void a_good_total_is_no_pass_while_a_site_is_untried() {
        LeakSheet sheet = new LeakSheet(SITES, Map.of("pad.a", Found.SEALS), 0.1, 2.0);
        assertThat(sheet.verdict()).isEqualTo(Verdict.NOT_KNOWN);
        assertThat(sheet.inWords()).isEqualTo("one site is untried: neck tenon");
    }

    @Test
    void every_site_tried_and_sealing_is_a_pass() {
        LeakSheet sheet = new LeakSheet(SITES, Map.of("pad.a", Found.SEALS, "tenon", Found.SEALS), null, 2.0);
        assertThat(sheet.verdict()).isEqualTo(Verdict.SEALS);
    }

    @Test
    void a_total_that_no_site_accounts_for_is_still_a_leak() {
        LeakSheet sheet = new LeakSheet(SITES, Map.of("pad.a", Found.SEALS, "tenon", Found.SEALS), 9.0, 2.0);
        assertThat(sheet.verdict()).isEqualTo(Verdict.LEAKS);
        assertThat(sheet.inWords()).contains("no site tried so far accounts for it");
    }

    @Test
    void a_leaking_site_is_named() {
        LeakSheet sheet = new LeakSheet(SITES, Map.of("tenon", Found.LEAKS), null, 2.0);
        assertThat(sheet.inWords()).isEqualTo("leaks at neck tenon; one site is untried: A pad");
    }

    @Test
    void a_site_the_horn_does_not_have_is_refused() {
        assertThatThrownBy(() -> new LeakSheet(SITES, Map.of("pad.z", Found.SEALS), null, 2.0))
                .hasMessage("pad.z is no leak site of this horn");
    }
}
