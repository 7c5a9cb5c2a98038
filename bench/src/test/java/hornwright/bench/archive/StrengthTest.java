package hornwright.bench.archive;

import static org.assertj.core.api.Assertions.assertThat;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What one item can carry: the table, then one less for each thing that weakens it. */
class StrengthTest {
    private static final SerialRange ONE = SerialRange.one(41207);

    private static int of(Means means, Hand hand) {
        return value(means, hand, Bearing.DIRECT, Interest.NEUTRAL, Integrity.ORIGINAL, ONE, "page 1", null);
    }

    private static int value(
            Means means,
            Hand hand,
            Bearing bearing,
            Interest interest,
            Integrity integrity,
            SerialRange serials,
            @Nullable String citation,
            @Nullable SearchLog search) {
        Evidence item = new Evidence(
                "e",
                means,
                hand,
                bearing,
                Stance.SUPPORTS,
                new Origin("o", means.kind()),
                interest,
                integrity,
                serials,
                citation,
                null,
                search);
        return Strength.of(item, Items.SERIALS).value();
    }

    @Test
    void a_horn_measured_or_analysed_on_an_unaltered_part_carries_most() {
        assertThat(of(new Means.Examined(Method.ANALYSED, true), Hand.FIRST)).isEqualTo(3);
        assertThat(of(new Means.Examined(Method.MEASURED, true), Hand.FIRST)).isEqualTo(3);
        assertThat(of(new Means.Examined(Method.SEEN, true), Hand.FIRST)).isEqualTo(2);
        assertThat(of(new Means.Examined(Method.MEASURED, false), Hand.FIRST)).isEqualTo(1);
    }

    @Test
    void a_paper_of_the_time_by_the_maker_carries_as_much_at_first_hand() {
        assertThat(of(new Means.Written(true), Hand.FIRST)).isEqualTo(3);
        assertThat(of(new Means.Written(true), Hand.SECOND)).isEqualTo(2);
        assertThat(of(new Means.Written(false), Hand.FIRST)).isEqualTo(2);
    }

    @Test
    void a_clear_picture_or_a_recorded_and_named_witness_carries_two_and_less_otherwise() {
        assertThat(of(new Means.Pictured(true), Hand.FIRST)).isEqualTo(2);
        assertThat(of(new Means.Pictured(false), Hand.FIRST)).isEqualTo(1);
        assertThat(of(new Means.Told(true), Hand.FIRST)).isEqualTo(2);
        assertThat(of(new Means.Told(true), Hand.SECOND)).isEqualTo(1);
        assertThat(of(new Means.Told(false), Hand.FIRST)).isEqualTo(1);
    }

    @Test
    void literature_carries_one_with_citations_and_hearsay_nothing() {
        assertThat(of(new Means.Published(true), Hand.SECOND)).isEqualTo(1);
        assertThat(of(new Means.Published(false), Hand.SECOND)).isEqualTo(0);
        assertThat(of(new Means.Rumoured(), Hand.FIRST)).isEqualTo(0);
    }

    @Test
    void each_weakness_takes_one_and_nothing_goes_below_nothing() {
        Means strong = new Means.Examined(Method.MEASURED, true);
        SerialRange wide = new SerialRange(38000, 45000);
        assertThat(value(strong, Hand.FIRST, Bearing.INDIRECT, Interest.NEUTRAL, Integrity.ORIGINAL, ONE, "p", null))
                .isEqualTo(2);
        assertThat(value(strong, Hand.FIRST, Bearing.DIRECT, Interest.SELLER, Integrity.ORIGINAL, ONE, "p", null))
                .isEqualTo(2);
        assertThat(value(strong, Hand.FIRST, Bearing.DIRECT, Interest.NEUTRAL, Integrity.UNKNOWN, ONE, "p", null))
                .isEqualTo(2);
        assertThat(value(strong, Hand.FIRST, Bearing.DIRECT, Interest.NEUTRAL, Integrity.ORIGINAL, wide, "p", null))
                .isEqualTo(2);
        assertThat(value(strong, Hand.FIRST, Bearing.INDIRECT, Interest.OWNER, Integrity.ALTERED, wide, "p", null))
                .isEqualTo(0);
    }

    @Test
    void what_cannot_be_found_again_carries_nothing() {
        Means strong = new Means.Examined(Method.MEASURED, true);
        assertThat(value(strong, Hand.FIRST, Bearing.DIRECT, Interest.NEUTRAL, Integrity.ORIGINAL, ONE, null, null))
                .isEqualTo(0);
    }

    @Test
    void looked_and_not_found_counts_only_with_a_log_of_the_search() {
        Means strong = new Means.Examined(Method.MEASURED, true);
        assertThat(value(strong, Hand.FIRST, Bearing.NEGATIVE, Interest.NEUTRAL, Integrity.ORIGINAL, ONE, "p", null))
                .isEqualTo(0);
        assertThat(value(
                        strong,
                        Hand.FIRST,
                        Bearing.NEGATIVE,
                        Interest.NEUTRAL,
                        Integrity.ORIGINAL,
                        ONE,
                        "p",
                        Items.search()))
                .isEqualTo(3);
    }

    @Test
    void every_step_is_said_in_words() {
        Evidence item = Items.supporting(new Means.Examined(Method.SEEN, true), "a");
        assertThat(Strength.of(item, Items.SERIALS).reasons())
                .containsExactly("2: seen on an unaltered part, first hand");
    }
}
