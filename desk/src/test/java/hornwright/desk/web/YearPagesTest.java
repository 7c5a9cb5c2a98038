package hornwright.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.archive.YearRow;
import hornwright.bench.archive.YearTable;
import hornwright.desk.archivefile.ArchiveFile;
import hornwright.desk.use.OpenShop;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** The shop's table from serial to year, by plain forms. */
final class YearPagesTest extends ServedShop {
    private static final String ROW = "serial=42000&year=1938%7E&source=a+letter+in+the+case";

    YearPagesTest() {
        super(OpenShop.FirstRun.DEMO);
    }

    private YearTable table() {
        return shop.archive().state().of("Tarrant & Loe").years();
    }

    private String post(String address, String body) throws IOException {
        return wire.post(
                        address,
                        body + "&seq=" + shop.archive().seq() + "&key=k"
                                + shop.archive().seq())
                .body();
    }

    @Test
    void the_demo_table_is_the_one_of_its_file_and_says_that_it_is_a_demo() {
        assertThat(table()).isEqualTo(ArchiveFile.demo().years());
        assertThat(table().rows())
                .hasSize(6)
                .allSatisfy(row -> assertThat(row.source()).endsWith("(demo)"));
    }

    @Test
    void a_year_stands_with_its_bracket_and_its_rows_on_both_pages() throws IOException {
        for (String address : new String[] {"/archive?of=41207", "/archive/as-built?voice=alto&serial=41207"}) {
            assertThat(wire.get(address).body())
                    .contains("1937, between 1937 and 1939", "40300 is of 1937: works day book", "44400 is of 1939");
        }
        assertThat(wire.get("/archive?of=37000").body()).contains("before the table's first row");
        assertThat(wire.get("/archive?of=many").body()).contains("A serial is digits like 41207");
    }

    @Test
    void a_row_is_put_replaced_and_taken_out_and_an_undo_brings_it_back() throws IOException {
        YearTable before = table();
        post("/archive/year", ROW);
        assertThat(table().rows()).hasSize(7).extracting(YearRow::source).contains("a letter in the case");
        post("/archive/year", ROW.replace("1938%7E", "1938-05"));
        assertThat(table().rows())
                .hasSize(7)
                .anySatisfy(row -> assertThat(row.year().text()).isEqualTo("1938-05"));
        post("/archive/year/out", "serial=42000");
        assertThat(table()).isEqualTo(before);
        post("/archive/undo", "edit=" + shop.archive().seq());
        assertThat(table().rows())
                .hasSize(7)
                .anySatisfy(row -> assertThat(row.year().text()).isEqualTo("1938-05"));
    }

    @Test
    void a_row_just_put_is_taken_back_in_the_history() throws IOException {
        YearTable before = table();
        post("/archive/year", ROW);
        assertThat(wire.get("/archive/history").body())
                .contains("Table of years: 42000 is of about 1938, by a letter in the case");
        post("/archive/undo", "edit=" + shop.archive().seq());
        assertThat(table()).isEqualTo(before);
    }

    @Test
    void all_that_is_wrong_with_a_row_is_said_at_once_and_nothing_is_kept() throws IOException {
        long before = shop.archive().seq();
        assertThat(post("/archive/year", "serial=x&year=1936/..&source="))
                .contains("A serial is digits", "a year with both ends", "Say where the year is written down");
        assertThat(post("/archive/year", "serial=42000&year=1941&source=a+list"))
                .contains("The table runs backwards: 42000 is of 1941, but 44400 is of 1939");
        assertThat(post("/archive/year/out", "serial=42001")).contains("The table has no row of 42001");
        assertThat(shop.archive().seq()).isEqualTo(before);
    }

    @Test
    void a_table_is_tried_first_then_brought_in_as_one_edit_and_a_second_time_adds_nothing() throws IOException {
        String text = "Serial;Built;Where\n42000;1938~;a letter, page 2\n43000;1938/1939;a letter\n";
        String body = "act=try&text=" + encoded(text);
        YearTable before = table();
        long seq = shop.archive().seq();
        assertThat(post("/archive/years", body)).contains("2 rows new or changed, 0 known", "a letter, page 2");
        assertThat(shop.archive().seq()).isEqualTo(seq);
        post("/archive/years", body.replace("act=try", "act=bring"));
        assertThat(shop.archive().seq()).isEqualTo(seq + 1);
        assertThat(table().rows()).hasSize(8);
        assertThat(post("/archive/years", body)).contains("0 rows new or changed, 2 known");
        post("/archive/undo", "edit=" + (seq + 1));
        assertThat(table()).isEqualTo(before);
    }

    @Test
    void every_fault_of_a_table_is_told_with_its_line_and_nothing_is_kept() throws IOException {
        long seq = shop.archive().seq();
        String text = "serial,year,source\nx,1938,a\n42000,soon,b\n42001,1938,\n42002,1938,a\n42002,1938,b\n";
        assertThat(post("/archive/years", "act=bring&text=" + encoded(text)))
                .contains(
                        "4 things are to be mended",
                        "a serial is digits",
                        "'soon' is not a date",
                        "a row says where",
                        "42002 stands in line 5 too");
        assertThat(post("/archive/years", "act=bring&text=" + encoded("serial,year,source\n42000,1941,a\n")))
                .contains("the table runs backwards");
        assertThat(post("/archive/years", "act=bring&text=" + encoded("a,b\n1,2\n")))
                .contains("no column is called so");
        assertThat(shop.archive().seq()).isEqualTo(seq);
    }

    private static String encoded(String text) {
        return java.net.URLEncoder.encode(text, java.nio.charset.StandardCharsets.UTF_8);
    }
}
