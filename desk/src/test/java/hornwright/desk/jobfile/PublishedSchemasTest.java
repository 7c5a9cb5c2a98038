package hornwright.desk.jobfile;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.horn.Voice;
import hornwright.bench.plan.NumberName;
import hornwright.bench.rules.Rounding;
import hornwright.bench.stock.StockKind;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Condition;
import hornwright.bench.survey.Originality;
import hornwright.bench.survey.PadClass;
import hornwright.bench.survey.PinAccess;
import hornwright.bench.survey.PinChoice;
import hornwright.bench.survey.PinSort;
import hornwright.bench.survey.PlayGrade;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.Treatment;
import hornwright.bench.survey.TrialVerdict;
import hornwright.bench.survey.WorkKind;
import hornwright.desk.house.Checkout;
import hornwright.desk.house.PublishedSchema;
import hornwright.desk.use.PlanJob;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The published schemas of jobs and plans say what the program says. */
final class PublishedSchemasTest {
    private static final PublishedSchema JOB = PublishedSchema.of("job");
    private static final PublishedSchema PLAN = PublishedSchema.of("plan");

    @ParameterizedTest
    @ValueSource(strings = {"job", "job-ten-minutes"})
    void the_example_jobs_and_their_plans_are_valid(String name) {
        String text = example(name);
        assertThat(JOB.against(text)).isEmpty();
        JobRequest job = JobFile.read(text);
        String plan = PlanJson.write(job, PlanJob.whole(job), "test").toString();
        assertThat(PLAN.against(plan)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{\"keywork\": \"tarrant-loe-alto\"}",
                "{\"keywork\": \"tarrant-loe-alto\", \"voice\": \"alto\", \"colour\": 1}",
                "{\"keywork\": \"tarrant-loe-alto\", \"voice\": \"contralto\"}",
                "{\"keywork\": \"tarrant-loe-alto\", \"voice\": \"alto\", \"readings\": [{\"id\": \"r\", \"kind\": \"play\", \"of\": \"d\", \"value_mm\": 1}]}"
            })
    void what_the_reader_refuses_the_schema_refuses(String job) {
        assertThat(JOB.against(job)).isNotEmpty();
    }

    @Test
    void every_list_of_words_is_that_of_the_program() {
        words("voice", Voice.values(), Voice::word);
        words("use", AgreedUse.values(), AgreedUse::word);
        words("stage", Stage.values(), Stage::word);
        words("readingKind", ReadingKind.values(), ReadingKind::word);
        words("playGrade", PlayGrade.values(), PlayGrade::word);
        words("verdict", TrialVerdict.values(), TrialVerdict::word);
        words("pinSort", PinSort.values(), PinSort::word);
        words("pinAccess", PinAccess.values(), PinAccess::word);
        words("pinChoice", PinChoice.values(), PinChoice::word);
        words("condition", Condition.values(), Condition::word);
        words("originality", Originality.values(), Originality::word);
        words("treatment", Treatment.values(), Treatment::word);
        words("workKind", WorkKind.values(), WorkKind::word);
        words("stockKind", StockKind.values(), StockKind::word);
        words("group", KeyGroup.values(), KeyGroup::word);
        words("placeKind", PlaceKind.values(), PlaceKind::word);
        words("padClass", PadClass.values(), PadClass::word);
        words("rounding", Rounding.values(), Rounding::word);
    }

    @Test
    void every_number_of_a_place_stands_in_the_schema_of_plans() {
        List<String> numbers = PLAN.tree()
                .at("/properties/places/items/properties/numbers/properties")
                .propertyStream()
                .map(entry -> entry.getKey())
                .toList();
        assertThat(numbers)
                .containsExactlyElementsOf(
                        Arrays.stream(NumberName.values()).map(NumberName::word).toList());
    }

    private static <E> void words(String definition, E[] values, Function<E, String> word) {
        assertThat(JOB.words(definition))
                .as(definition)
                .containsExactlyElementsOf(Arrays.stream(values).map(word).toList());
    }

    private static String example(String name) {
        return Checkout.text(Checkout.root()
                .resolve("desk/src/main/resources/hornwright/examples")
                .resolve(name + ".json"));
    }
}
