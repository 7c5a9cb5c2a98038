package hornwright.desk.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Tables as spreadsheets of several countries write them. Source: RFC 4180; OWASP ASVS 5.0.0, 1.2.10. */
final class CsvTableTest {
    @Test
    void comma_semicolon_and_tab_are_told_from_the_head_and_a_mark_at_the_beginning_is_no_text() {
        for (String separator : List.of(",", ";", "\t")) {
            CsvTable table =
                    CsvTable.read("\ufeffserial%1$splace%1$smm\r\n41630%1$sfoot.d%1$s\"1,9\"\r\n".formatted(separator));
            assertThat(table.head()).containsExactly("serial", "place", "mm");
            assertThat(table.rows().getFirst().cells()).containsExactly("41630", "foot.d", "1,9");
        }
    }

    @Test
    void quoted_cells_hold_separators_quotes_and_line_ends_and_rows_keep_their_line() {
        CsvTable table = CsvTable.read("a,b\n\"one\ntwo\",\"say \"\"three\"\"\"\n\n,\nfour,\n");
        assertThat(table.rows().get(0).cells()).containsExactly("one\ntwo", "say \"three\"");
        assertThat(table.rows().get(1)).isEqualTo(new CsvTable.Row(6, List.of("four", "")));
        assertThat(table.rows()).hasSize(2);
    }

    @Test
    void a_broken_table_is_told_by_its_line() {
        assertThatThrownBy(() -> CsvTable.read("a,b\n1,2\n\"three,4\n5,6\n"))
                .isInstanceOfSatisfying(
                        CsvTable.Broken.class,
                        broken -> assertThat(broken.line()).isEqualTo(3));
        assertThatThrownBy(() -> CsvTable.read("a,b\n\"x\"y,2\n")).hasMessageContaining("closing quotation mark");
        assertThatThrownBy(() -> CsvTable.read("  \n")).hasMessageContaining("empty");
        assertThatThrownBy(() -> CsvTable.read("a\n" + "1\n".repeat(20_002))).hasMessageContaining("20,000 rows");
    }

    @Test
    void whatever_is_written_reads_back_and_no_cell_begins_as_a_formula() {
        Random random = new Random(7);
        String letters = "ab=+-@'\",;\t\r\n 1♭é";
        for (int i = 0; i < 2000; i++) {
            List<String> cells = new ArrayList<>();
            for (int c = 0; c < 3; c++) {
                StringBuilder cell = new StringBuilder("x".repeat(random.nextInt(2)));
                for (int k = random.nextInt(6); k > 0; k--) {
                    cell.append(letters.charAt(random.nextInt(letters.length())));
                }
                cells.add(cell.toString());
            }
            cells.set(0, "=" + cells.getFirst());
            String line = CsvTable.line(cells.stream());
            CsvTable table = CsvTable.read("a,b,c\r\n" + line);
            for (int c = 0; c < 3; c++) {
                assertThat(table.rows().getFirst().cells().get(c)).isEqualTo(cells.get(c));
            }
            assertThat(line).matches("(?s)\"?'=.*");
        }
    }
}
