package hornwright.desk.jobfile;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.archive.Grade;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.Planner;
import hornwright.bench.plan.origin.OriginLine;
import hornwright.bench.plan.origin.OriginalityStatement;
import hornwright.bench.plan.origin.Verdict;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** How original the invented alto 41207 is, from findings and the invented archive. */
class OriginalityTest {
    private static String found(String place, String material, String originality) {
        return "{\"place\": \"%s\", \"material\": \"%s\", \"condition\": \"sound\", \"originality\": \"%s\"}"
                .formatted(place, material, originality);
    }

    private static OriginalityStatement of(String... findings) {
        String text =
                "{\"keywork\": \"tarrant-loe-alto\", \"voice\": \"alto\", \"serial\": 41207, \"archive\": \"tarrant-loe\","
                        + " \"findings\": [" + Stream.of(findings).collect(Collectors.joining(", ")) + "]}";
        JobRequest job = JobFile.read(text);
        Plan plan = Planner.plan(job.inputs());
        return OriginalityStatement.of(job.inputs().keywork(), plan);
    }

    private static OriginLine only(OriginalityStatement statement) {
        assertThat(statement.lines()).hasSize(1);
        return statement.lines().getFirst();
    }

    @Test
    void cork_feet_judged_original_are_borne_out_by_horns_near_this_serial() {
        OriginLine line =
                only(of(found("foot.d", "natural cork", "original"), found("foot.e", "natural cork", "original")));
        assertThat(line.verdict()).isEqualTo(Verdict.BORNE_OUT);
        assertThat(line.grade()).isEqualTo(Grade.WELL_SUPPORTED);
        assertThat(line.what()).isEqualTo("2 × foot");
        assertThat(line.words())
                .isEqualTo("judged original, and of the material such horns likely left the factory with"
                        + " (B · well supported)");
    }

    @Test
    void felt_feet_judged_original_are_doubted_because_the_change_came_later() {
        OriginLine line = only(of(found("foot.d", "woven wool felt", "original")));
        assertThat(line.verdict()).isEqualTo(Verdict.DOUBTED);
        assertThat(line.words()).contains("such horns likely had natural cork (B · well supported)");
    }

    @Test
    void what_nobody_judged_is_held_against_the_archive_and_never_called_original() {
        assertThat(only(of(found("foot.d", "natural cork", "unknown"))).verdict())
                .isEqualTo(Verdict.AGREES);
        OriginLine differs = only(of(found("foot.d", "synthetic felt", "unknown")));
        assertThat(differs.verdict()).isEqualTo(Verdict.DIFFERS);
        assertThat(differs.words())
                .endsWith("; later repairers commonly use what is there, so this is probably a later repair");
        assertThat(only(of(found("foot.d", "woven wool felt", "unknown"))).words())
                .endsWith("so this is a later repair, or an exception of the works");
    }

    @Test
    void the_owner_is_told_what_changes_the_worth_of_the_horn_and_what_nobody_can_know() {
        assertThat(of(
                                found("foot.d", "natural cork", "original"),
                                found("foot.e", "synthetic felt", "later repair"),
                                found("foot.f", "natural cork", "missing"),
                                found("foot.g", "natural cork", "unknown"),
                                found("foot.a", "woven wool felt", "original"))
                        .forOwner())
                .containsExactly(
                        "1 place is later work (1 × foot), and not what left the factory",
                        "1 place is missing (1 × foot), and will be replaced by something new",
                        "1 place looks original (1 × foot), but such horns likely had another material: either the archive"
                                + " has a gap here, or an old repair passes",
                        "Of 1 place nobody has said whether the piece itself is original",
                        "What is called original is likely so: the evidence from other horns is well supported at the least");
        assertThat(of().forOwner()).isEmpty();
    }

    @Test
    void a_contested_place_says_so_with_its_word() {
        OriginLine line = only(of(found("adhesive.d", "shellac", "original")));
        assertThat(line.verdict()).isEqualTo(Verdict.CONTESTED);
        assertThat(line.words()).endsWith("(X · contested)");
    }

    @Test
    void a_place_no_witness_shows_is_only_judged() {
        OriginLine line = only(of(found("foot.front-f", "natural cork", "original")));
        assertThat(line.verdict()).isEqualTo(Verdict.JUDGED);
        assertThat(line.words()).endsWith("(N · not assessed)");
    }

    @Test
    void the_opening_counts_and_the_best_stands_first() {
        OriginalityStatement statement = of(
                found("foot.d", "natural cork", "original"),
                found("foot.e", "synthetic felt", "later repair"),
                found("foot.f", "natural cork", "missing"),
                found("foot.g", "natural cork", "unknown"));
        assertThat(statement.opening())
                .contains("4 were judged one by one: 1 original, 1 later repairs, 1 missing, 1 not settled");
        assertThat(statement.lines())
                .extracting(OriginLine::verdict)
                .containsExactly(Verdict.BORNE_OUT, Verdict.AGREES, Verdict.LATER, Verdict.MISSING);
    }

    @Test
    void every_line_that_states_history_carries_its_grade() {
        OriginalityStatement statement = of(
                found("foot.d", "natural cork", "original"),
                found("foot.e", "woven wool felt", "original"),
                found("adhesive.d", "shellac", "original"),
                found("sleeve.side-c", "plain cotton tubing", "unknown"),
                found("strap-ring", "brass", "unknown"));
        assertThat(statement.lines()).allSatisfy(line -> {
            Grade grade = Objects.requireNonNull(line.grade(), line.words());
            assertThat(line.words()).contains("(" + grade.letter() + " · " + grade.word() + ")");
        });
    }

    @Test
    void a_horn_nobody_looked_at_has_no_statement() {
        assertThat(of().isEmpty()).isTrue();
    }

    @Test
    void a_neck_stamped_with_another_number_is_named_first() {
        List<String> stamps = of(
                        "{\"place\": \"stamp.body\", \"material\": \"brass\", \"condition\": \"sound\","
                                + " \"originality\": \"original\", \"assemblyNumber\": \"207\"}",
                        "{\"place\": \"stamp.neck\", \"material\": \"brass\", \"condition\": \"sound\","
                                + " \"originality\": \"unknown\", \"assemblyNumber\": \"118\"}")
                .stamps();
        assertThat(stamps)
                .containsExactly(
                        "The neck is stamped 118, the body 207: it cannot be original to this body unless somebody explains it");
    }
}
