package hornwright.desk.use;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornwright.desk.house.Checkout;
import hornwright.desk.journal.Entry;
import hornwright.desk.journal.Hand;
import hornwright.desk.journal.Place;
import hornwright.desk.journal.PostgresServer;
import hornwright.desk.journal.Unusable;
import hornwright.desk.json.BadInput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("slow")
final class BackUpTest {
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
    }

    @AfterEach
    void close() {
        shop.close();
    }

    @Test
    void what_is_restored_is_what_was_there_row_by_row_and_file_by_file() {
        Path backup = backup();
        OpenShop.Where other = new OpenShop.Where.Folder(folder.resolve("other"));
        BackUp.restore(backup, other, Place.CLOCK);
        assertSame(other);
    }

    @Test
    @Tag("postgres")
    void a_shop_moves_from_the_folder_to_a_server_and_back() {
        OpenShop.Where server = new OpenShop.Where.Server(PostgresServer.freshDatabase());
        BackUp.restore(backup(), server, Place.CLOCK);
        assertSame(server);
        Path second = folder.resolve("second");
        try (Shop there = OpenShop.look(server, Place.CLOCK)) {
            new BackUp(there).to(second);
        }
        OpenShop.Where again = new OpenShop.Where.Folder(folder.resolve("again"));
        BackUp.restore(second, again, Place.CLOCK);
        assertSame(again);
    }

    private void assertSame(OpenShop.Where where) {
        try (Shop restored = OpenShop.open(where, OpenShop.FirstRun.DEMO, Place.CLOCK)) {
            assertThat(entries(restored)).isEqualTo(entries(shop));
            assertThat(new KeepPerson(restored).all()).isEqualTo(new KeepPerson(shop).all());
            assertThat(new Shelf(restored).all()).isEqualTo(new Shelf(shop).all());
            assertThat(restored.jobNow("q-0001")).isEqualTo(shop.jobNow("q-0001"));
            String photo = Objects.requireNonNull(shop.jobNow("q-0001").photos().get("serial"))
                    .file();
            assertThat(new KeepFile(restored).read(Objects.requireNonNull(photo)))
                    .hasValueSatisfying(
                            bytes -> assertThat(bytes).isEqualTo("a photograph".getBytes(StandardCharsets.UTF_8)));
            assertThat(new CheckShop(restored).check().faults()).isEmpty();
        }
    }

    @Test
    void every_file_of_a_backup_that_is_changed_lost_or_added_is_named() throws IOException {
        Path backup = backup();
        for (Path file : Checkout.files(backup, "")) {
            if (!Files.isRegularFile(file)) {
                continue;
            }
            byte[] bytes = Files.readAllBytes(file);
            byte[] flipped = bytes.clone();
            flipped[flipped.length / 2] ^= 1;
            Files.write(file, flipped);
            assertRefused(backup, file);
            Files.delete(file);
            assertRefused(backup, file);
            Files.write(file, bytes);
        }
        Path stranger = backup.resolve("stranger.txt");
        Files.writeString(stranger, "boo");
        assertRefused(backup, stranger);
    }

    private void assertRefused(Path backup, Path file) {
        String name = String.valueOf(file.getFileName());
        assertThatThrownBy(() -> BackUp.restore(backup, new OpenShop.Where.Folder(folder.resolve("no")), Place.CLOCK))
                .as(name)
                .isInstanceOf(Unusable.class)
                .satisfies(refusal -> {
                    if (!name.startsWith("manifest")) {
                        assertThat(refusal.getMessage()).contains(name);
                    }
                });
        assertThat(folder.resolve("no")).doesNotExist();
    }

    @Test
    void the_manifest_is_one_the_common_program_understands() throws Exception {
        Process check = new ProcessBuilder("sha256sum", "-c", "--quiet", "manifest-sha256.txt")
                .directory(backup().toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(check.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(check.waitFor()).as(said).isZero();
    }

    @Test
    void a_backup_is_not_written_over_another_nor_restored_over_a_shop() {
        Path backup = backup();
        assertThatThrownBy(() -> new BackUp(shop).to(backup)).isInstanceOf(BadInput.class);
        assertThatThrownBy(() -> BackUp.restore(backup, new OpenShop.Where.Folder(folder.resolve("shop")), Place.CLOCK))
                .isInstanceOf(BadInput.class);
        assertThat(new CheckShop(shop).check().faults()).isEmpty();
    }

    @Test
    void a_backup_made_while_the_bench_works_is_one_whole_picture() throws Exception {
        AtomicBoolean stop = new AtomicBoolean();
        try (var threads = Executors.newSingleThreadExecutor()) {
            Future<Integer> bench = threads.submit(() -> {
                int notes = 0;
                while (!stop.get()) {
                    new WriteNote(shop)
                            .write("q-0001", Form.once(shop.job("q-0001").seq(), HAND), "job", "note " + notes++);
                }
                return notes;
            });
            List<Path> backups = new ArrayList<>();
            for (int i = 0; i < 5; i++) {
                Path target = folder.resolve("busy-" + i);
                try (Shop beside = OpenShop.look(new OpenShop.Where.Folder(folder.resolve("shop")), Place.CLOCK)) {
                    new BackUp(beside).to(target);
                }
                backups.add(target);
            }
            stop.set(true);
            assertThat(bench.get()).isPositive();
            for (Path one : backups) {
                OpenShop.Where there = new OpenShop.Where.Folder(folder.resolve("restored-" + one.getFileName()));
                BackUp.restore(one, there, Place.CLOCK);
                try (Shop restored = OpenShop.look(there, Place.CLOCK)) {
                    assertThat(new CheckShop(restored).check().faults()).isEmpty();
                    List<Entry> picture = entries(restored);
                    assertThat(entries(shop).subList(0, picture.size())).isEqualTo(picture);
                }
            }
        }
    }

    private Path backup() {
        Path target = folder.resolve("backup");
        assertThat(new BackUp(shop).to(target).files()).isEqualTo(4);
        return target;
    }

    private static List<Entry> entries(Shop of) {
        List<Entry> all = new ArrayList<>();
        of.data().journal().readAll(all::add);
        return all;
    }
}
