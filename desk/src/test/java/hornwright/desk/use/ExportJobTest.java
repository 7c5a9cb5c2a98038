package hornwright.desk.use;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornwright.bench.job.Job;
import hornwright.desk.house.Checkout;
import hornwright.desk.journal.Hand;
import hornwright.desk.journal.Person;
import hornwright.desk.journal.Place;
import hornwright.desk.json.BadInput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ExportJobTest {
    private static final Hand HAND = new Hand("p-1", "bench one");

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private Shop shop;

    @BeforeEach
    void open() {
        shop = OpenShop.open(new OpenShop.Where.Folder(folder.resolve("shop")), OpenShop.FirstRun.DEMO, Place.CLOCK);
        var photo = new KeepFile(shop).keep("a photograph".getBytes(StandardCharsets.UTF_8), "image/jpeg");
        new TickPhoto(shop).tick("q-0001", Form.once(shop.job("q-0001").seq(), HAND), "serial", photo.sha256());
        new RecordPlayTest(shop)
                .record("q-0001", Form.once(shop.job("q-0001").seq(), HAND), RecordPlayTestTest.heard("note.d-4", -6));
    }

    @AfterEach
    void close() {
        shop.close();
    }

    @Test
    void what_is_imported_is_what_was_exported_to_the_last_byte() throws IOException {
        for (String id : new String[] {"q-0001", "q-0002", "q-0003"}) {
            Path first = folder.resolve("first-" + id);
            new ExportJob(shop).to(id, first);
            Path second = folder.resolve("second-" + id);
            try (Shop other = emptyShop("other-" + id)) {
                Job imported = new ImportJob(other).from(first, HAND);
                assertThat(imported.as(id)).isEqualTo(shop.jobNow(id));
                assertThat(new CheckShop(other).check().faults()).isEmpty();
                new FurnishShop(other).name(Form.once(other.house().seq(), HAND), "Quayside Winds");
                new ExportJob(other).to(imported.id(), second);
                assertThat(contents(second, imported.id(), id)).isEqualTo(contents(first, id, id));
            }
        }
    }

    /** All files but the history, which in the other shop is the one edit of the import. */
    private static Map<String, String> contents(Path of, String id, String as) throws IOException {
        Map<String, String> all = new TreeMap<>();
        for (Path file : Checkout.files(of, "")) {
            if (Files.isRegularFile(file) && !file.endsWith(JobFolder.HISTORY)) {
                all.put(
                        of.relativize(file).toString(),
                        Files.readString(file, StandardCharsets.ISO_8859_1)
                                .replace("\"id\" : \"" + id + "\"", "\"id\" : \"" + as + "\""));
            }
        }
        return all;
    }

    @Test
    void an_import_is_one_edit_that_one_undo_takes_out() {
        Path out = folder.resolve("out");
        new ExportJob(shop).to("q-0001", out);
        Job copy = new ImportJob(shop).from(out, HAND);
        assertThat(copy.id()).isEqualTo("q-0004");
        assertThat(shop.job("q-0004").seq()).isEqualTo(1);
        assertThat(new Undo(shop).undoOfJob("q-0004", Form.once(1, HAND), 1)).isInstanceOf(Saved.Kept.class);
        assertThat(new Shelf(shop).all()).hasSize(3);
    }

    @Test
    void the_tables_open_in_a_spreadsheet_and_hold_every_reading() throws IOException {
        new WriteNote(shop).write("q-0001", Form.once(shop.job("q-0001").seq(), HAND), "job", "=1+1, \"quoted\"");
        Path out = folder.resolve("out");
        new ExportJob(shop).to("q-0001", out);
        String readings = Files.readString(out.resolve("readings.csv"));
        Job job = shop.jobNow("q-0001");
        assertThat(readings.split("\r\n")).hasSize(1 + job.readings().current().size());
        assertThat(readings)
                .contains("cup inside diameter,cup.low-b-flat,along the hinge,48.75,mm,0.05,48.75 mm,caliper");
        assertThat(Files.readString(out.resolve("notes.csv"))).contains("job,\"'=1+1, \"\"quoted\"\"\"");
        assertThat(Files.readString(out.resolve("README.txt")))
                .contains("alto 41207 by Tarrant & Loe")
                .contains("Quayside Winds");
        assertThat(out.resolve("photos"))
                .isDirectoryContaining(file -> file.toString().contains("serial-"));
    }

    @Test
    void a_damaged_folder_brings_in_nothing_and_says_where() throws IOException {
        Path out = folder.resolve("out");
        new ExportJob(shop).to("q-0001", out);
        try (Shop other = emptyShop("other")) {
            Path photo = Checkout.files(out.resolve("photos"), ".jpg").getFirst();
            Files.writeString(photo, "another photograph");
            assertThatThrownBy(() -> new ImportJob(other).from(out, HAND))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("the picture of pad.low-b as it came is missing or changed");
            Path json = out.resolve("job.json");
            Files.writeString(
                    json, Files.readString(json).replaceFirst("\"stage\" : \"arrival\"", "\"stage\" : \"arrived\""));
            assertThatThrownBy(() -> new ImportJob(other).from(out, HAND))
                    .isInstanceOfSatisfying(
                            BadInput.class,
                            bad -> assertThat(bad.faults().getFirst().pointer())
                                    .isEqualTo("/readings/current/0/stage"));
            assertThat(new Shelf(other).all()).isEmpty();
            assertThat(new KeepPerson(other).all()).isEmpty();
        }
    }

    @Test
    void an_owner_whose_id_somebody_else_has_gets_another() {
        Path out = folder.resolve("out");
        new ExportJob(shop).to("q-0001", out);
        try (Shop other = emptyShop("other")) {
            Person stranger = new Person("p-harbour-town-band", "Someone else", "", "", "");
            new KeepPerson(other).put(stranger);
            Job job = new ImportJob(other).from(out, HAND);
            assertThat(job.arrival().owner()).isEqualTo("p-harbour-town-band-2");
            assertThat(new KeepPerson(other).find("p-harbour-town-band")).contains(stranger);
        }
    }

    private Shop emptyShop(String name) {
        return OpenShop.open(new OpenShop.Where.Folder(folder.resolve(name)), OpenShop.FirstRun.EMPTY, Place.CLOCK);
    }
}
