package hornwright.bench.archive;

import static hornwright.bench.archive.Items.against;
import static hornwright.bench.archive.Items.ofStrength;
import static hornwright.bench.archive.Items.supporting;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Each rule of the grades, at its edge. */
class LedgerTest {
    private static final Means MEASURED = new Means.Examined(Method.MEASURED, true);
    private static final Means MAKERS_PAPER = new Means.Written(true);
    private static final Means SEEN = new Means.Examined(Method.SEEN, true);
    private static final Means PICTURE = new Means.Pictured(true);
    private static final Means BOOK = new Means.Published(true);
    private static final Means RUMOUR = new Means.Rumoured();

    private static Grade grade(@Nullable SearchLog search, Evidence... items) {
        return new Ledger(Items.CLAIM, List.of(items), search, List.of())
                .grade()
                .grade();
    }

    private static Grade searched(Evidence... items) {
        return grade(Items.search(), items);
    }

    @Test
    void two_strong_origins_of_two_kinds_establish_it_once_somebody_has_searched() {
        assertThat(searched(supporting(MEASURED, "a"), supporting(MAKERS_PAPER, "b")))
                .isEqualTo(Grade.ESTABLISHED);
        assertThat(grade(null, supporting(MEASURED, "a"), supporting(MAKERS_PAPER, "b")))
                .isEqualTo(Grade.WELL_SUPPORTED);
        assertThat(searched(supporting(MEASURED, "a"), supporting(MEASURED, "b")))
                .isEqualTo(Grade.WELL_SUPPORTED);
    }

    @Test
    void one_strong_and_two_fair_origins_over_two_kinds_establish_it() {
        assertThat(searched(supporting(MEASURED, "a"), supporting(SEEN, "b"), supporting(PICTURE, "c")))
                .isEqualTo(Grade.ESTABLISHED);
        assertThat(searched(supporting(MEASURED, "a"), supporting(SEEN, "b"), supporting(SEEN, "c")))
                .isEqualTo(Grade.WELL_SUPPORTED);
    }

    @Test
    void one_strong_and_one_fair_or_three_fair_support_it_well() {
        assertThat(searched(supporting(MEASURED, "a"), supporting(SEEN, "b"))).isEqualTo(Grade.WELL_SUPPORTED);
        assertThat(searched(supporting(SEEN, "a"), supporting(SEEN, "b"), supporting(SEEN, "c")))
                .isEqualTo(Grade.WELL_SUPPORTED);
        assertThat(searched(supporting(SEEN, "a"), supporting(SEEN, "b"))).isEqualTo(Grade.INDICATED);
    }

    @Test
    void one_strong_or_fair_origin_or_three_weak_ones_indicate_it() {
        assertThat(searched(supporting(MEASURED, "a"))).isEqualTo(Grade.INDICATED);
        assertThat(searched(supporting(SEEN, "a"))).isEqualTo(Grade.INDICATED);
        assertThat(searched(supporting(BOOK, "a"), supporting(BOOK, "b"), supporting(BOOK, "c")))
                .isEqualTo(Grade.INDICATED);
        assertThat(searched(supporting(BOOK, "a"), supporting(BOOK, "b"))).isEqualTo(Grade.REPORTED);
    }

    @Test
    void hearsay_however_much_of_it_is_a_report() {
        Evidence[] rumours = new Evidence[20];
        for (int i = 0; i < rumours.length; i++) {
            rumours[i] = supporting(RUMOUR, "rumour " + i);
        }
        assertThat(searched(rumours)).isEqualTo(Grade.REPORTED);
        assertThat(searched()).isEqualTo(Grade.NOT_ASSESSED);
    }

    @Test
    void copies_of_one_origin_count_once_with_the_best_of_them() {
        List<Evidence> items = new ArrayList<>(List.of(supporting(MEASURED, "a")));
        for (int i = 0; i < 5; i++) {
            items.add(Items.item("copy " + i, SEEN, "a", Stance.SUPPORTS));
        }
        assertThat(searched(items.toArray(Evidence[]::new))).isEqualTo(Grade.INDICATED);
    }

    @Test
    void one_fair_item_against_it_contests_it_and_a_weak_one_does_not() {
        Evidence strong = supporting(MEASURED, "a");
        Evidence paper = supporting(MAKERS_PAPER, "b");
        assertThat(searched(strong, paper, against(SEEN, "c"))).isEqualTo(Grade.CONTESTED);
        assertThat(searched(strong, paper, against(BOOK, "c"))).isEqualTo(Grade.ESTABLISHED);
    }

    @Test
    void a_contradiction_resolved_in_writing_no_longer_contests_but_stays_in_the_counts() {
        Ledger ledger = new Ledger(
                Items.CLAIM,
                List.of(supporting(MEASURED, "a"), supporting(MAKERS_PAPER, "b"), against(SEEN, "c")),
                Items.search(),
                List.of(new Resolution(
                        "against c", "felt laid over the first cork", "the bench", Edtf.parse("2026-02"))));
        assertThat(ledger.grade().inWords())
                .isEqualTo("established (grade A): 2 looks for it, 1 against, from 3 origins");
        assertThatThrownBy(() -> new Resolution("against c", " ", "the bench", Edtf.parse("2026")))
                .hasMessageContaining("written reason");
    }

    @Test
    void it_is_refuted_when_the_other_side_alone_is_well_supported_and_support_is_a_report() {
        assertThat(searched(supporting(RUMOUR, "a"), against(MEASURED, "b"), against(SEEN, "c")))
                .isEqualTo(Grade.REFUTED);
        assertThat(searched(supporting(SEEN, "a"), against(MEASURED, "b"), against(SEEN, "c")))
                .isEqualTo(Grade.CONTESTED);
        assertThat(searched(against(MEASURED, "b"), against(SEEN, "c"))).isEqualTo(Grade.REFUTED);
    }

    @Test
    void the_standing_order_runs_from_established_to_refuted() {
        assertThat(Grade.values()).extracting(Grade::letter).containsExactly('A', 'B', 'C', 'D', 'N', 'X', 'R');
        assertThat(Grade.ESTABLISHED.lowered()).isEqualTo(Grade.WELL_SUPPORTED);
        assertThat(Grade.REPORTED.lowered()).isEqualTo(Grade.REPORTED);
        assertThat(Grade.WELL_SUPPORTED.atMost(Grade.REPORTED)).isEqualTo(Grade.REPORTED);
        assertThat(Grade.CONTESTED.atMost(Grade.REPORTED)).isEqualTo(Grade.CONTESTED);
    }

    @Test
    void an_origin_is_of_one_kind_only() {
        assertThatThrownBy(() -> new Ledger(
                        Items.CLAIM,
                        List.of(supporting(MEASURED, "a"), Items.item("x", PICTURE, "a", Stance.SUPPORTS)),
                        null,
                        List.of()))
                .hasMessage("origin a has two kinds");
    }

    @Test
    void no_exception_among_sixty_horns_still_leaves_five_in_a_hundred() {
        // 1 - 0.05^(1/n), from the binomial: plain arithmetic
        assertThat(new Examined(12, 10, 0).exceptionShareAtMost()).isBetween(0.2588, 0.2590);
        assertThat(new Examined(60, 60, 0).exceptionShareAtMost()).isBetween(0.0486, 0.0488);
        assertThat(new Examined(9, 7, 0).inWords()).isEqualTo("7 of 9 examined, no exception");
        assertThat(new Examined(9, 7, 2).exceptionShareAtMost()).isEqualTo(1);
    }

    @Test
    void means_of_each_strength_have_it() {
        for (int strength = 0; strength <= 3; strength++) {
            for (int variant = 0; variant < 4; variant++) {
                Evidence item = supporting(ofStrength(strength, variant), "a");
                assertThat(Strength.of(item, Items.SERIALS).value()).isEqualTo(strength);
            }
        }
    }
}
