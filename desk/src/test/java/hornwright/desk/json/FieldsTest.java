package hornwright.desk.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

final class FieldsTest {
    private static List<Fault> faultsOf(String json, Function<Fields, ?> reader) {
        Faults faults = new Faults();
        Object ignored = Fields.of(StrictJson.object(json), "", faults).read(reader);
        assertThat(ignored).isNotNull();
        return faults.list();
    }

    @Test
    void a_missing_number_is_told_with_its_pointer_and_an_example() {
        assertThat(faultsOf("{}", f -> f.number("arm_mm", Bound.POSITIVE, "30")))
                .containsExactly(new Fault("/arm_mm", "missing", "\"arm_mm\": 30"));
    }

    @Test
    void null_counts_as_absent() {
        assertThat(faultsOf("{\"arm_mm\": null}", f -> f.numberOr("arm_mm", 7, Bound.POSITIVE, "30")))
                .isEmpty();
    }

    @Test
    void a_text_where_a_number_is_meant_is_refused() {
        assertThat(faultsOf("{\"arm_mm\": \"30\"}", f -> f.number("arm_mm", Bound.POSITIVE, "30")))
                .singleElement()
                .satisfies(fault ->
                        assertThat(fault.what()).contains("must be a number").contains("\"30\""));
    }

    @Test
    void a_number_out_of_bounds_is_refused_with_the_bound() {
        assertThat(faultsOf("{\"arm_mm\": -3}", f -> f.number("arm_mm", Bound.POSITIVE, "30")))
                .singleElement()
                .satisfies(fault -> assertThat(fault.line())
                        .isEqualTo("/arm_mm: -3 must be more than zero; right would be \"arm_mm\": 30"));
    }

    @Test
    void a_wrong_unit_is_an_unknown_field_that_names_the_right_one() {
        assertThat(faultsOf("{\"arm_cm\": 3}", f -> f.numberOr("arm_mm", 1, Bound.POSITIVE, "30")))
                .singleElement()
                .satisfies(fault -> assertThat(fault.example()).contains("arm_mm"));
    }

    @Test
    void a_slip_of_the_pen_is_answered_with_the_nearest_name() {
        assertThat(faultsOf("{\"spirng\": 3}", f -> f.numberOr("spring", 1, Bound.ANY, "1")))
                .singleElement()
                .satisfies(fault -> assertThat(fault.example()).isEqualTo("\"spring\""));
    }

    @Test
    void faults_inside_a_list_point_to_the_element() {
        assertThat(faultsOf("{\"keys\": [{\"id\": \"f\"}, {}]}", f -> f.list("keys", key -> key.text("id", "f"))))
                .extracting(Fault::pointer)
                .containsExactly("/keys/1/id");
    }

    @Test
    void a_closed_choice_lists_its_words() {
        assertThat(faultsOf("{\"end\": \"open\"}", f -> f.choice("end", Map.of("unflanged", 1))))
                .singleElement()
                .satisfies(fault -> assertThat(fault.what()).contains("not one of unflanged"));
    }

    @Test
    void all_faults_are_told_at_once() {
        assertThat(faultsOf("{\"x\": 1, \"b\": \"\"}", f -> f.number("a", Bound.ANY, "1") + f.text("b", "t")))
                .hasSize(3);
    }

    @Test
    void pointers_escape_slashes_and_tildes() {
        assertThat(faultsOf("{\"a/b~c\": 1}", f -> 1))
                .extracting(Fault::pointer)
                .containsExactly("/a~1b~0c");
    }

    @Test
    void a_repeated_key_is_refused() {
        assertThatThrownBy(() -> StrictJson.object("{\"a\": 1, \"a\": 2}"))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("twice");
    }

    @Test
    void nan_top_level_arrays_emptiness_and_rubbish_are_refused() {
        for (String text : List.of("{\"a\": NaN}", "[1]", "", "   ", "{\"a\": 1", "{} x", "\"text\"", "{\"a\": 1}}")) {
            assertThatThrownBy(() -> StrictJson.objects(text)).as(text).isInstanceOf(BadInput.class);
        }
    }

    @Test
    void several_objects_are_read_in_order() {
        assertThat(StrictJson.objects("{\"a\":1}\n{\"a\":2} {\"a\":3}")).hasSize(3);
    }
}
