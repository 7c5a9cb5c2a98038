package hornwright.desk.use;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Means;
import hornwright.bench.archive.Method;
import hornwright.bench.archive.Observation;
import hornwright.bench.horn.Voice;
import hornwright.bench.job.StreamName;
import hornwright.desk.journal.Place;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A table of looks on its way into the archive. */
final class ImportEvidenceTest {
    private static final String MAKER = "Tarrant & Loe";
    private static final String GOOD = """
            Serial No;Instrument;Place;Found;Thickness;Colour;How;Unaltered;Cited;remarks
            50101;alto;foot.d;natural cork;1,9;light brown;measured;yes;book 3;
            50101;alto;foot.e;natural cork;1.8;light brown;measured;yes;book 3;nice
            50202;tenor;pad.d;kid leather;;;seen;no;book 3;
            """;

    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    private Shop shop;

    @BeforeEach
    void open() {
        shop = OpenShop.open(new OpenShop.Where.Folder(folder), OpenShop.FirstRun.DEMO, Place.CLOCK);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    @Test
    void a_table_with_other_words_commas_and_semicolons_is_understood_and_nothing_is_written_by_trying() {
        long before = shop.archive().seq();
        ImportEvidence.Trial trial = attempt(GOOD);
        assertThat(trial.faults()).isEmpty();
        assertThat(trial.horns()).hasSize(2);
        assertThat(trial.looks()).hasSize(3);
        assertThat(trial.looks().getFirst()).satisfies(look -> {
            assertThat(look.thicknessAtLeastMm()).isEqualTo(1.9);
            assertThat(look.means()).isEqualTo(new Means.Examined(Method.MEASURED, true));
            assertThat(look.origin().id()).isEqualTo("horn 50101");
        });
        assertThat(shop.archive().seq()).isEqualTo(before);
    }

    @Test
    void all_of_it_is_one_edit_and_one_undo_takes_all_of_it_out() {
        Archive before = archive();
        long seq = shop.archive().seq();
        bringIn(GOOD);
        assertThat(shop.archive().seq()).isEqualTo(seq + 1);
        assertThat(archive().observations()).hasSize(before.observations().size() + 3);
        assertThat(archive().asBuilt(Voice.ALTO, 50101).get("foot.d")).isNotNull();
        new Undo(shop).undo(StreamName.ARCHIVE, Form.once(seq + 1, OpenShop.PROGRAM), seq + 1);
        assertThat(archive()).isEqualTo(before);
    }

    @Test
    void the_same_table_again_adds_nothing() {
        bringIn(GOOD);
        long seq = shop.archive().seq();
        ImportEvidence.Trial again = attempt(GOOD);
        assertThat(again.known()).isEqualTo(3);
        assertThat(again.brought()).isEmpty();
        bringIn(GOOD);
        assertThat(shop.archive().seq()).isEqualTo(seq);
    }

    @Test
    void a_look_at_a_horn_that_is_known_joins_it() {
        var known = archive().witnesses().getFirst();
        ImportEvidence.Trial trial = attempt("serial,voice,place,material\n%d,%s,neck-cork,natural cork\n"
                .formatted(known.serial(), known.voice().word()));
        assertThat(trial.horns()).isEmpty();
        assertThat(trial.looks()).extracting(Observation::witness).containsExactly(known.id());
    }

    @Test
    void every_fault_is_told_with_line_column_and_what_would_be_right() {
        ImportEvidence.Trial trial = attempt("""
                serial,voice,place,material,thickness_mm,built,method,unaltered
                41x,alto,foot.d,cork,1.9,1925~,seen,yes
                50101,kazoo,foot.zz,,"1,234.5",19zz,guessed,perhaps
                50103,alto,foot.d,cork,91,,seen,
                """);
        assertThat(trial.faults())
                .extracting(fault -> fault.line() + " " + fault.column())
                .containsExactlyInAnyOrder(
                        "2 serial",
                        "3 voice",
                        "3 place",
                        "3 material",
                        "3 thickness_mm",
                        "3 built",
                        "3 method",
                        "3 unaltered",
                        "4 thickness_mm");
        assertThat(trial.faults())
                .allSatisfy(fault -> assertThat(fault.example()).isNotBlank());
        assertThat(trial.brought()).isEmpty();
        long seq = shop.archive().seq();
        assertThat(new ImportEvidence(shop).bringIn(Form.once(seq, OpenShop.PROGRAM), "x.csv", trial))
                .isEmpty();
        assertThat(shop.archive().seq()).isEqualTo(seq);
    }

    @Test
    void one_horn_described_in_two_ways_is_a_fault() {
        assertThat(attempt(
                                "serial,voice,place,material,built\n50101,alto,foot.d,cork,1925\n50101,alto,foot.e,cork,1926\n")
                        .faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.what()).contains("described otherwise"));
    }

    @Test
    void columns_are_taken_as_a_person_chose_them() {
        String text = "n,v,p,m\n50101,alto,foot.d,cork\n";
        assertThat(attempt(text).faults()).hasSize(4);
        assertThat(new ImportEvidence(shop)
                        .attempt(
                                text,
                                Map.of(
                                        EvidenceColumn.SERIAL, 0,
                                        EvidenceColumn.VOICE, 1,
                                        EvidenceColumn.PLACE, 2,
                                        EvidenceColumn.MATERIAL, 3),
                                MAKER)
                        .looks())
                .hasSize(1);
    }

    private ImportEvidence.Trial attempt(String text) {
        return new ImportEvidence(shop).attempt(text, Map.of(), MAKER);
    }

    private void bringIn(String text) {
        new ImportEvidence(shop).bringIn(Form.once(shop.archive().seq(), OpenShop.PROGRAM), "looks.csv", attempt(text));
    }

    private Archive archive() {
        return shop.archive().state().of(MAKER);
    }
}
