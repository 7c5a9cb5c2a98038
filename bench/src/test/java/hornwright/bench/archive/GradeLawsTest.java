package hornwright.bench.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Four laws no ledger may break, over ten thousand drawn by lot. */
class GradeLawsTest {
    private static final int LEDGERS = 10_000;

    /** A ledger drawn by lot and a source of more chance. */
    private record Drawn(Ledger ledger, Random random) {
        static Drawn of(int seed) {
            Random random = new Random(seed);
            List<Evidence> items = new ArrayList<>();
            int size = random.nextInt(12);
            boolean oneSided = random.nextBoolean();
            for (int i = 0; i < size; i++) {
                Evidence item = Items.random("e" + i, random);
                boolean turned = oneSided && random.nextInt(8) > 0;
                items.add(turned ? GradeLawsTest.with(item, item.id(), Stance.SUPPORTS) : item);
            }
            @Nullable SearchLog search = random.nextBoolean() ? Items.search() : null;
            List<Resolution> resolutions = new ArrayList<>();
            for (Evidence item : items) {
                if (random.nextInt(6) == 0) {
                    resolutions.add(new Resolution(item.id(), "a later repair", "the bench", Edtf.parse("2026")));
                }
            }
            return new Drawn(new Ledger(Items.CLAIM, items, search, resolutions), random);
        }

        Grade grade() {
            return ledger.grade().grade();
        }

        Grade and(Evidence more) {
            List<Evidence> items = new ArrayList<>(ledger.items());
            items.add(random.nextInt(items.size() + 1), more);
            return new Ledger(ledger.claim(), items, ledger.search(), ledger.resolutions())
                    .grade()
                    .grade();
        }
    }

    private static Evidence with(Evidence e, String id, Stance stance) {
        return new Evidence(
                id,
                e.means(),
                e.hand(),
                e.bearing(),
                stance,
                e.origin(),
                e.interest(),
                e.integrity(),
                e.serials(),
                e.citation(),
                e.file(),
                e.search());
    }

    @Test
    void the_draw_meets_every_grade_often() {
        Map<Grade, Integer> met = new EnumMap<>(Grade.class);
        for (int seed = 0; seed < LEDGERS; seed++) {
            met.merge(Drawn.of(seed).grade(), 1, Integer::sum);
        }
        assertThat(met).hasSize(Grade.values().length);
        assertThat(met.values()).allMatch(times -> times >= 20);
    }

    @Test
    void an_independent_item_in_support_never_lowers_the_grade() {
        for (int seed = 0; seed < LEDGERS; seed++) {
            Drawn drawn = Drawn.of(seed);
            Evidence more = with(
                    Items.random("more", "an origin of its own", drawn.random().nextInt(6), drawn.random()),
                    "more",
                    Stance.SUPPORTS);
            assertThat(drawn.and(more).isAtLeast(drawn.grade()))
                    .as("seed " + seed)
                    .isTrue();
        }
    }

    @Test
    void a_copy_that_is_no_stronger_never_raises_the_grade() {
        int copied = 0;
        for (int seed = 0; seed < LEDGERS; seed++) {
            Drawn drawn = Drawn.of(seed);
            for (Evidence known : drawn.ledger().items()) {
                Evidence copy = with(
                        Items.random("copy", known.origin().id(), kindOf(known), drawn.random()),
                        "copy",
                        Stance.SUPPORTS);
                if (known.stance() == Stance.SUPPORTS && strength(copy) <= strength(known)) {
                    assertThat(drawn.grade().isAtLeast(drawn.and(copy)))
                            .as("seed " + seed)
                            .isTrue();
                    copied++;
                }
            }
        }
        assertThat(copied).isGreaterThan(LEDGERS / 2);
    }

    private static int kindOf(Evidence known) {
        return List.of(Kind.values()).indexOf(known.kind());
    }

    private static int strength(Evidence item) {
        return Strength.of(item, Items.SERIALS).value();
    }

    @Test
    void a_contradiction_never_raises_the_grade() {
        for (int seed = 0; seed < LEDGERS; seed++) {
            Drawn drawn = Drawn.of(seed);
            Evidence against = with(Items.random("against", drawn.random()), "against", Stance.CONTRADICTS);
            assertThat(drawn.grade().isAtLeast(drawn.and(against)))
                    .as("seed " + seed)
                    .isTrue();
        }
    }

    @Test
    void the_order_of_entry_does_not_matter() {
        for (int seed = 0; seed < LEDGERS; seed++) {
            Drawn drawn = Drawn.of(seed);
            Ledger ledger = drawn.ledger();
            List<Evidence> items = new ArrayList<>(ledger.items());
            Collections.shuffle(items, drawn.random());
            List<Resolution> resolutions = new ArrayList<>(ledger.resolutions());
            Collections.shuffle(resolutions, drawn.random());
            assertThat(new Ledger(ledger.claim(), items, ledger.search(), resolutions).grade())
                    .as("seed " + seed)
                    .isEqualTo(ledger.grade());
        }
    }

    @Test
    void a_search_log_never_lowers_and_only_ever_makes_established() {
        for (int seed = 0; seed < LEDGERS; seed++) {
            Ledger ledger = Drawn.of(seed).ledger();
            Grade without = new Ledger(ledger.claim(), ledger.items(), null, ledger.resolutions())
                    .grade()
                    .grade();
            Grade with = new Ledger(ledger.claim(), ledger.items(), Items.search(), ledger.resolutions())
                    .grade()
                    .grade();
            assertThat(without).isNotEqualTo(Grade.ESTABLISHED);
            assertThat(with == Grade.ESTABLISHED || with == without)
                    .as("seed " + seed)
                    .isTrue();
        }
    }
}
