package hornwright.desk.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.Planner;
import hornwright.bench.rules.Rounding;
import hornwright.bench.steps.StepState;
import hornwright.bench.survey.Observed;
import hornwright.desk.archivefile.ArchiveFile;
import hornwright.desk.house.PublishedSchema;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Fault;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.List;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class JobFileTest {
    private static final String HEAD = "{\"keywork\": \"tarrant-loe-alto\", \"voice\": \"alto\"";

    @Test
    void a_keywork_and_a_voice_are_enough() {
        PlanInputs job = JobFile.read(HEAD + "}").inputs();
        assertThat(job)
                .isEqualTo(PlanInputs.of(KeyworkFile.shipped("tarrant-loe-alto").orElseThrow()));
    }

    @Test
    void a_keywork_may_be_written_out_in_the_job() {
        Keywork tenor = KeyworkFile.shipped("tarrant-loe-tenor").orElseThrow();
        String job = "{\"voice\": \"tenor\", \"keywork\": " + KeyworkFile.write(tenor) + "}";
        assertThat(JobFile.read(job).inputs().keywork()).isEqualTo(tenor);
    }

    @Test
    void switches_give_the_variant_the_horn_really_is() {
        String job = HEAD + ", \"switches\": {\"frontF\": false}}";
        Keywork without = JobFile.read(job).inputs().keywork();
        assertThat(without.keys().find("front-f")).isEmpty();
        assertThat(Planner.plan(JobFile.read(job).inputs()).places().find("foot.front-f"))
                .isEmpty();
    }

    @Test
    void an_archive_with_a_serial_says_what_is_as_built() {
        String archive = ArchiveFile.write(ArchiveFile.demo());
        PlanInputs job = JobFile.read(HEAD + ", \"serial\": 41207, \"archive\": " + archive + "}")
                .inputs();
        assertThat(job.asBuilt()).isNotEmpty();
        assertThat(Planner.plan(job).places().stream()
                        .filter(place -> place.asBuilt().fromArchive()))
                .isNotEmpty()
                .allSatisfy(place -> assertThat(place.asBuilt().says()).contains("(grade "));
    }

    @Test
    void a_reading_keeps_what_it_says_and_takes_the_usual_instrument() {
        String job = HEAD
                + ", \"readings\": [{\"id\": \"r.1\", \"kind\": \"cup depth\", \"of\": \"cup.d\", \"value_mm\": 3.0}]}";
        assertThat(JobFile.read(job).inputs().readings()).singleElement().satisfies(reading -> {
            assertThat(reading.observed()).isEqualTo(Observed.Amount.mm(3.0));
            assertThat(reading.instrument()).isEqualTo("depth rod");
        });
    }

    @Test
    void a_decision_dated_after_the_stage_was_reached_asks_for_its_step_again_and_an_undated_one_does_not() {
        String decided = HEAD + ", \"stage\": \"rested\", \"decisions\": [{\"cup\": \"cup.g\", \"front_mm\": 5.3, "
                + "\"why\": \"accepted\"WHEN}]}";
        String dated = decided.replace("WHEN", ", \"when\": \"2026-11-25T09:30:00Z\"");
        assertThat(PublishedSchema.of("job").against(dated)).isEmpty();
        assertThat(foot(dated)).isInstanceOf(StepState.Recheck.class);
        assertThat(foot(decided.replace("WHEN", ""))).isInstanceOf(StepState.Good.class);
    }

    private static StepState foot(String job) {
        return Planner.plan(JobFile.read(job).inputs()).order().stream()
                .filter(planned -> planned.step().id().equals("cork.foot.g"))
                .findFirst()
                .orElseThrow()
                .state();
    }

    @Test
    void rules_that_are_named_are_the_shops_own_and_the_rest_stay_typical() {
        var rules = JobFile.read(HEAD + ", \"rules\": {\"pad.allowance_mm\": 0.5, \"rounding\": \"down\"}}")
                .inputs()
                .rules();
        assertThat(rules.get("pad.allowance_mm").asShipped()).isFalse();
        assertThat(rules.value("pad.allowance_mm")).isEqualTo(0.5);
        assertThat(rules.rounding()).isEqualTo(Rounding.DOWN);
        assertThat(rules.get("pad.step_mm").asShipped()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{} | /keywork | missing",
                "{\"keywork\": \"unheard-of\", \"voice\": \"alto\"} | /keywork | no keywork",
                "{\"keywork\": \"tarrant-loe-alto\", \"voice\": \"tenor\"} | /voice | not tenor",
                "HEAD, \"serial\": 41207.5} | /serial | whole number",
                "HEAD, \"colour\": \"gold\"} | /colour | unknown field",
                "HEAD, \"readings\": [{\"id\": \"r\", \"kind\": \"cup depth\", \"of\": \"cup.x\", \"value_mm\": 3}]} | /readings/0/of | no cup",
                "HEAD, \"readings\": [{\"id\": \"r\", \"kind\": \"cup depth\", \"of\": \"cup.d\", \"value_N\": 3}]} | /readings/0/value_N | unknown field",
                "HEAD, \"readings\": [{\"id\": \"r\", \"kind\": \"cup depth\", \"of\": \"cup.d\", \"value_mm\": -3}]} | /readings/0/value_mm | zero or more",
                "HEAD, \"readings\": [{\"id\": \"r\", \"kind\": \"hole diameter\", \"of\": \"d\", \"value_mm\": 0}]} | /readings/0/value_mm | more than zero",
                "HEAD, \"readings\": [{\"id\": \"r\", \"kind\": \"trial pad\", \"of\": \"cup.d\", \"stack_mm\": 4, \"verdict\": \"back first\"}]} | /readings/0/oppositeGap_mm | gap opposite",
                "HEAD, \"readings\": [{\"id\": \"r\", \"kind\": \"trial shim\", \"of\": \"d\", \"shim_mm\": 1, \"without_mm\": 4, \"with_mm\": 6}]} | /readings/0/with_mm | lowers",
                "HEAD, \"findings\": [{\"place\": \"pad.d\", \"condition\": \"so-so\"}]} | /findings/0/condition | not one of",
                "HEAD, \"decisions\": [{\"use\": \"display\", \"why\": \"x\", \"when\": \"noon\"}]} | /decisions/0/when | no instant",
                "HEAD, \"decisions\": [{\"why\": \"x\"}]} | /decisions/0 | exactly one of",
                "HEAD, \"rules\": {\"pad.allowance_mm\": 5}} | /rules/pad.allowance_mm | between",
                "HEAD, \"rules\": {\"pad.alowance_mm\": 0}} | /rules/pad.alowance_mm | unknown field",
                "HEAD, \"stock\": [{\"id\": \"a\", \"kind\": \"pad\", \"material\": \"kid\", \"diameter_mm\": 0}]} | /stock/0/diameter_mm | more than zero",
            })
    void what_is_wrong_is_told_with_its_pointer_and_an_example(String job, String pointer, String words) {
        assertThatThrownBy(() -> JobFile.read(job.replace("HEAD", HEAD)))
                .isInstanceOfSatisfying(
                        BadInput.class,
                        bad -> assertThat(bad.faults())
                                .anySatisfy(fault -> {
                                    assertThat(fault.pointer()).isEqualTo(pointer);
                                    assertThat(fault.what()).contains(words);
                                })
                                .allSatisfy(fault -> assertThat(fault.example()).isNotBlank()));
    }

    @Test
    void all_faults_come_at_once() {
        String job = HEAD + ", \"serial\": -1, \"use\": \"show\", \"stock\": [{\"id\": \"a\"}], \"extra\": 1}";
        assertThatThrownBy(() -> JobFile.read(job))
                .asInstanceOf(InstanceOfAssertFactories.type(BadInput.class))
                .extracting(bad -> bad.faults().stream().map(Fault::pointer).toList())
                .isEqualTo(List.of("/stock/0/kind", "/stock/0/material", "/serial", "/use", "/extra"));
    }
}
