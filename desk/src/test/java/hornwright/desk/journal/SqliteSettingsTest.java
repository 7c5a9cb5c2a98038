package hornwright.desk.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** SQLite as it must be set for what is said to be kept to be kept; read back from the connections themselves. */
final class SqliteSettingsTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @Test
    void every_connection_of_both_pools_carries_the_settings() {
        try (ShopData data = new Place.InFolder(folder).open()) {
            Map<String, String> wanted = Map.of(
                    "journal_mode", "wal",
                    "synchronous", "2",
                    "foreign_keys", "1",
                    "trusted_schema", "0",
                    "cell_size_check", "1",
                    "busy_timeout", "5000",
                    "mmap_size", "0",
                    "fullfsync", "1",
                    "checkpoint_fullfsync", "1");
            for (Handle handle : all(data.database().reader(), 3)) {
                assertSet(handle, wanted);
                assertSet(handle, Map.of("query_only", "1"));
                handle.close();
            }
            for (Handle handle : all(data.database().writer(), 1)) {
                assertSet(handle, wanted);
                assertSet(handle, Map.of("query_only", "0"));
                handle.close();
            }
        }
    }

    /** Held open together, so that they are different connections. */
    private static List<Handle> all(Jdbi pool, int size) {
        List<Handle> handles = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            handles.add(pool.open());
        }
        return handles;
    }

    private static void assertSet(Handle handle, Map<String, String> wanted) {
        wanted.forEach((setting, value) -> assertThat(handle.createQuery("pragma " + setting)
                        .mapTo(String.class)
                        .one())
                .as(setting)
                .isEqualTo(value));
    }

    @Test
    void the_library_is_one_that_cannot_damage_its_file() {
        assertThat(Sqlite.older("3.51.2", PinnedSqlite.OLDEST)).isTrue();
        assertThat(Sqlite.older("3.40.1", PinnedSqlite.OLDEST)).isTrue();
        assertThat(Sqlite.older("3.51.3", PinnedSqlite.OLDEST)).isFalse();
        assertThat(Sqlite.older("3.54.1", PinnedSqlite.OLDEST)).isFalse();
        try (ShopData data = new Place.InFolder(folder).open()) {
            String version = data.database()
                    .reader()
                    .withHandle(handle -> handle.createQuery("select sqlite_version()")
                            .mapTo(String.class)
                            .one());
            assertThat(Sqlite.older(version, PinnedSqlite.OLDEST)).isFalse();
        }
    }

    @Test
    void a_second_program_is_sent_to_the_first_ones_address() {
        try (DataFolder first = DataFolder.take(folder)) {
            first.tellAddress("http://127.0.0.1:8420");
            assertThatThrownBy(() -> DataFolder.take(folder)).isInstanceOfSatisfying(Unusable.class, refusal -> {
                assertThat(refusal.isOnlyNow()).isTrue();
                assertThat(refusal).hasMessageContaining("http://127.0.0.1:8420");
            });
        }
        DataFolder.take(folder).close();
    }

    /** The model of a power cut: the log ends anywhere, and its last part may be rubbish. */
    @Tag("slow")
    @Test
    void a_log_cut_off_anywhere_opens_clean_with_every_commit_before_the_cut() throws Exception {
        Path shop = folder.resolve("shop");
        List<Long> logAfter = new ArrayList<>();
        byte[] database;
        byte[] log;
        try (ShopData data = new Place.InFolder(shop).open()) {
            emptyTheLog(data);
            for (int i = 0; i < 30; i++) {
                data.journal()
                        .append(
                                List.of(JournalContract.note(i, "note " + i)),
                                JournalContract.HAND,
                                "note " + i,
                                Journal.Alongside.nothing());
                logAfter.add(Files.size(shop.resolve("shop.db-wal")));
            }
            database = Files.readAllBytes(shop.resolve("shop.db"));
            log = Files.readAllBytes(shop.resolve("shop.db-wal"));
        }
        Random random = new Random(3);
        for (int round = 0; round < 60; round++) {
            int cut = random.nextInt(log.length);
            Path torn = Files.createDirectory(folder.resolve("torn-" + round));
            byte[] rest = java.util.Arrays.copyOf(log, cut);
            boolean rubbish = round % 2 == 1 && cut > 600;
            for (int i = 0; rubbish && i < 500; i++) {
                rest[cut - 1 - i] = (byte) random.nextInt(256);
            }
            Files.write(torn.resolve("shop.db"), database);
            Files.write(torn.resolve("shop.db-wal"), rest);
            int sound = rubbish ? cut - 500 : cut;
            long whole = logAfter.stream().filter(end -> end <= sound).count();
            try (ShopData data = new Place.InFolder(torn).open()) {
                assertThat(data.database().faults()).isEmpty();
                assertThat(data.journal().checkChain()).isEmpty();
                assertThat(data.journal().head())
                        .as("round %d, cut at %d", round, cut)
                        .isEqualTo(whole);
            }
        }
    }

    /** Fails when a reader keeps hold of the log, since then the log would grow for ever. */
    private static void emptyTheLog(ShopData data) throws InterruptedException {
        String busy = "1";
        for (int i = 0; i < 50 && !busy.equals("0"); i++) {
            busy = data.database().writer().withHandle(handle -> {
                handle.execute("pragma wal_autocheckpoint = 0");
                return handle.createQuery("pragma wal_checkpoint(truncate)")
                        .mapTo(String.class)
                        .one();
            });
            Thread.sleep(20);
        }
        assertThat(busy).as("a reader keeps hold of the log").isEqualTo("0");
    }
}
