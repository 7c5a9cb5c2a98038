package hornwright.bench.archive;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.horn.Voice;
import hornwright.engines.belief.Standing;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class InterchangeTest {
    private static final SearchLog LOG = new SearchLog("drawer", Edtf.parse("2026"), "screws");

    private static Evidence evidence(
            String id, Means means, Stance stance, long from, long to, @Nullable SearchLog log) {
        return new Evidence(
                id,
                means,
                Hand.FIRST,
                Bearing.DIRECT,
                stance,
                new Origin(id, means.kind()),
                Interest.NEUTRAL,
                Integrity.ORIGINAL,
                new SerialRange(from, to),
                "page 1",
                null,
                log);
    }

    private static Fitting tried(String id, Stance stance, long serial) {
        return fitting("screw", evidence(id, new Means.Examined(Method.MEASURED, true), stance, serial, serial, null));
    }

    private static Fitting fitting(String part, Evidence evidence) {
        return new Fitting(FitKind.SCREW, Voice.ALTO, List.of("screw-head.a", "screw-head.b"), part, 2.2, evidence);
    }

    private static Fits at(long serial, Fitting... all) {
        return new Interchange(Archive.empty("A maker").withFittings(List.of(all)))
                .at(Voice.ALTO, "screw-head.a", serial)
                .getFirst();
    }

    @Test
    void a_claim_is_graded_by_the_same_rules_as_everything_else() {
        Fitting one = tried("h1", Stance.SUPPORTS, 40_000);
        Fitting two = tried("h2", Stance.SUPPORTS, 42_000);
        assertThat(at(40_000, one).grading().grade()).isEqualTo(Grade.INDICATED);
        assertThat(at(40_000, one, two).grading().grade()).isEqualTo(Grade.WELL_SUPPORTED);
        Fitting paper = fitting("screw", evidence("p", new Means.Written(true), Stance.SUPPORTS, 40_000, 42_000, null));
        assertThat(at(40_000, one, paper).grading().grade())
                .as("nobody looked for more")
                .isEqualTo(Grade.WELL_SUPPORTED);
        Fitting logged = fitting("screw", evidence("p", new Means.Written(true), Stance.SUPPORTS, 40_000, 42_000, LOG));
        assertThat(at(40_000, one, logged).grading().grade()).isEqualTo(Grade.ESTABLISHED);
        assertThat(at(40_000, one, tried("h3", Stance.CONTRADICTS, 41_000))
                        .grading()
                        .grade())
                .isEqualTo(Grade.CONTESTED);
        assertThat(at(41_000, tried("h3", Stance.CONTRADICTS, 41_000), tried("h4", Stance.CONTRADICTS, 42_000))
                        .grading()
                        .grade())
                .isEqualTo(Grade.REFUTED);
    }

    @Test
    void between_those_that_were_tried_it_is_one_grade_lower_and_beyond_them_at_most_reported() {
        Fitting one = tried("h1", Stance.SUPPORTS, 40_000);
        Fitting two = tried("h2", Stance.SUPPORTS, 42_000);
        Fits between = at(41_000, one, two);
        assertThat(between.standing()).isEqualTo(Standing.INTERPOLATED);
        assertThat(between.grading().grade()).isEqualTo(Grade.INDICATED);
        assertThat(between.grading().reasons()).anyMatch(why -> why.contains("one grade lower"));
        Fits beyond = at(43_000, one, two);
        assertThat(beyond.standing()).isEqualTo(Standing.EXTRAPOLATED);
        assertThat(beyond.grading().grade()).isEqualTo(Grade.REPORTED);
        assertThat(at(40_000, one, two).standing()).isEqualTo(Standing.OBSERVED);
    }

    @Test
    void another_part_another_size_and_another_voice_are_another_claim() {
        Fitting one = tried("h1", Stance.SUPPORTS, 40_000);
        Fitting other = fitting("other screw", one.evidence());
        Fitting larger = new Fitting(FitKind.SCREW, Voice.ALTO, one.places(), "screw", 2.5, one.evidence());
        Fitting tenor = new Fitting(FitKind.SCREW, Voice.TENOR, one.places(), "screw", 2.2, one.evidence());
        Archive archive = Archive.empty("A maker").withFittings(List.of(one, other, larger, tenor));
        assertThat(new Interchange(archive).all()).hasSize(4);
        assertThat(new Interchange(archive).at(Voice.ALTO, "screw-head.b", null))
                .hasSize(3);
        assertThat(new Interchange(archive).at(Voice.ALTO, "screw-head.c", null))
                .isEmpty();
    }

    @Test
    void a_contradiction_set_aside_in_writing_no_longer_contests() {
        Archive archive = Archive.empty("A maker")
                .withFittings(List.of(tried("h1", Stance.SUPPORTS, 40_000), tried("h3", Stance.CONTRADICTS, 40_000)));
        Archive aside = archive.withResolutions(
                List.of(new Resolution("h3", "the hole was bushed", "the bench", Edtf.parse("2026"))));
        assertThat(new Interchange(archive).all().getFirst().grading().grade()).isEqualTo(Grade.CONTESTED);
        assertThat(new Interchange(aside).all().getFirst().grading().grade()).isEqualTo(Grade.INDICATED);
    }
}
