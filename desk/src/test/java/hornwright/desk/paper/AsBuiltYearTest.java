package hornwright.desk.paper;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.archive.SerialRange;
import hornwright.bench.horn.Keywork;
import hornwright.desk.archivefile.ArchiveFile;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The year on the printed as-built sheet. */
class AsBuiltYearTest {
    private static final Keywork ALTO = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();

    private static String year(long serial) {
        var archive = ArchiveFile.demo();
        var built = archive.asBuilt(
                ALTO.voice(),
                serial,
                ALTO.places().stream().map(place -> place.id()).toList());
        return new AsBuiltWords(ALTO, built, serial, new SerialRange(30_000, 70_000))
                .sheet(
                        new SheetHead("alto " + serial, ""),
                        List.of(),
                        60,
                        archive.allYears().at(serial))
                .year();
    }

    @Test
    void a_year_is_printed_with_its_bracket_and_the_rows_it_lies_between() {
        assertThat(year(41_207))
                .startsWith("Made 1937, between 1937 and 1939, by this shop's table of years: 40300 is of 1937, by")
                .contains("44400 is of 1939");
        assertThat(year(1)).startsWith("Year not known: this number lies before the table's first row");
    }
}
