package hornwright.bench.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class YearTableTest {
    private static YearRow row(long serial, String year) {
        return new YearRow(serial, Edtf.parse(year), "demo list");
    }

    private static YearTable table(YearRow... rows) {
        return new YearTable(List.of(rows));
    }

    private static final YearTable TABLE = table(row(44_400, "1939"), row(38_000, "1936"), row(48_600, "1945~"));

    @Test
    void a_serial_between_two_rows_has_a_year_and_the_bracket_of_both() {
        assertThat(table(row(38_000, "1936"), row(44_000, "1939")).at(42_000).inWords())
                .isEqualTo("1938, between 1936 and 1939");
        assertThat(TABLE.at(48_000).inWords()).isEqualTo("about 1944, between 1939 and about 1945");
    }

    @Test
    void a_serial_with_a_row_has_the_year_of_its_row() {
        assertThat(TABLE.at(44_400).inWords()).isEqualTo("1939, by its own row");
        assertThat(table(row(1, "1937/1939")).at(1).inWords()).isEqualTo("1938, between 1937 and 1939");
    }

    @Test
    void two_rows_of_one_year_leave_no_other() {
        assertThat(table(row(100, "1936"), row(200, "1936")).at(150).inWords())
                .isEqualTo("1936, as the rows on both sides");
    }

    @Test
    void nothing_is_said_before_the_first_row_nor_after_the_last() {
        assertThat(TABLE.at(37_999).inWords()).isEqualTo("before the table's first row: 38000 is of 1936");
        assertThat(TABLE.at(48_601).inWords()).isEqualTo("after the table's last row: 48600 is of about 1945");
        assertThat(table().at(40_000).inWords()).isEqualTo("the table has no rows yet");
    }

    @Test
    void a_table_that_runs_backwards_tells_no_year_and_names_the_two_rows() {
        assertThat(table(row(100, "1937"), row(200, "1936"), row(300, "1938"))
                        .at(250)
                        .inWords())
                .isEqualTo("the table runs backwards: 100 is of 1937, but 200 is of 1936");
    }

    @Test
    void in_a_thousand_tables_drawn_by_lot_years_never_fall_and_lie_in_their_bracket() {
        Random lot = new Random(38_114);
        for (int n = 0; n < 1000; n++) {
            YearTable table = drawn(lot);
            long first = table.rows().getFirst().serial();
            long last = table.rows().getLast().serial();
            int before = Integer.MIN_VALUE;
            for (long serial = first; serial <= last; serial += 1 + (last - first) / 60) {
                assertThat(table.at(serial)).isInstanceOf(YearAnswer.Found.class);
                YearAnswer.Found found = (YearAnswer.Found) table.at(serial);
                assertThat(found.year()).isBetween(found.earliest(), found.latest());
                assertThat(found.year()).isGreaterThanOrEqualTo(before);
                assertThat(serial).isBetween(found.from().serial(), found.to().serial());
                before = found.year();
            }
        }
    }

    private static YearTable drawn(Random lot) {
        List<YearRow> rows = new ArrayList<>();
        long serial = 1000;
        int year = 1900;
        for (int i = 0; i < 1 + lot.nextInt(8); i++) {
            int wide = lot.nextInt(3);
            rows.add(row(serial, wide == 0 ? "" + year : year + "/" + (year + wide)));
            serial += 1 + lot.nextInt(5000);
            year += wide + lot.nextInt(6);
        }
        return new YearTable(rows);
    }

    @Test
    void a_row_needs_both_ends_of_its_year_a_source_and_a_serial_of_its_own() {
        assertThatIllegalArgumentException().isThrownBy(() -> row(1, "1936/.."));
        assertThatIllegalArgumentException().isThrownBy(() -> new YearRow(1, Edtf.parse("1936"), " "));
        assertThatIllegalArgumentException().isThrownBy(() -> row(-1, "1936"));
        assertThatIllegalArgumentException().isThrownBy(() -> table(row(1, "1936"), row(1, "1937")));
    }
}
