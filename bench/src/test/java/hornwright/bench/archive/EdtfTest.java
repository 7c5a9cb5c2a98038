package hornwright.bench.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Dates as far as they are known; forms from ISO 8601-2:2019, levels 0 and 1. */
class EdtfTest {
    @ParameterizedTest
    @CsvSource({
        "1925, 1925-01-01, 1925-12-31",
        "1925-03, 1925-03-01, 1925-03-31",
        "1924-02, 1924-02-01, 1924-02-29",
        "1925-03-09, 1925-03-09, 1925-03-09",
        "192X, 1920-01-01, 1929-12-31",
        "19XX, 1900-01-01, 1999-12-31",
        "1925-XX, 1925-01-01, 1925-12-31",
        "1925-21, 1925-01-01, 1925-12-31",
        "1924/1926, 1924-01-01, 1926-12-31",
        "1924-05/1926-02-03, 1924-05-01, 1926-02-03"
    })
    void a_date_spans_the_days_it_can_mean(String text, LocalDate from, LocalDate to) {
        Edtf date = Edtf.parse(text);
        assertThat(date.earliest()).isEqualTo(from);
        assertThat(date.latest()).isEqualTo(to);
    }

    @Test
    void open_and_unknown_ends_have_no_day() {
        assertThat(Edtf.parse("1925/..").latest()).isNull();
        assertThat(Edtf.parse("../1925").earliest()).isNull();
        assertThat(Edtf.parse("/1925").earliest()).isNull();
    }

    @Test
    void marks_say_about_uncertain_or_both() {
        assertThat(Edtf.parse("1925~").approximate()).isTrue();
        assertThat(Edtf.parse("1925~").uncertain()).isFalse();
        assertThat(Edtf.parse("1925?").uncertain()).isTrue();
        assertThat(Edtf.parse("1925%").approximate()).isTrue();
        assertThat(Edtf.parse("1925%").uncertain()).isTrue();
        assertThat(Edtf.parse("1925~").inWords()).isEqualTo("about 1925");
        assertThat(Edtf.parse("1925?").inWords()).isEqualTo("1925, uncertain");
        assertThat(Edtf.parse("1924/1926").inWords()).isEqualTo("1924 to 1926");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "25",
                "the thirties",
                "1925-13",
                "1925-02-30",
                "1926/1924",
                "1924/1925/1926",
                "1925-XX-03",
                "19X5",
                "../.."
            })
    void what_is_no_date_is_refused_in_a_sentence(String text) {
        assertThatThrownBy(() -> Edtf.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("is not a date: ");
    }
}
