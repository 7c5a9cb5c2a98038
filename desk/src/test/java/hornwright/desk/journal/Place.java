package hornwright.desk.journal;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.jdbi.v3.core.Handle;

/** Where a store test keeps its data: every test of a contract runs once on each kind of place. */
public sealed interface Place {
    Clock CLOCK = Clock.fixed(Instant.parse("2026-03-02T09:00:00Z"), ZoneOffset.UTC);

    /** Opens the same data each time it is called within one test. */
    ShopData open();

    /** Takes away what keeps the journal from being changed, as somebody would who wants to change it. */
    void openTheGuard(Handle handle);

    /** Makes the next write fail as a full disk or a broken line does, until closed. */
    AutoCloseable fail(ShopData data);

    record InFolder(Path folder) implements Place {
        @Override
        public ShopData open() {
            return ShopData.open(DataFolder.take(folder), CLOCK);
        }

        /** A file that may not grow is what SQLite makes of a full disk. */
        @Override
        public AutoCloseable fail(ShopData data) {
            data.database().writer().useHandle(handle -> handle.execute("pragma max_page_count = 1"));
            return () ->
                    data.database().writer().useHandle(handle -> handle.execute("pragma max_page_count = 1073741823"));
        }

        @Override
        public void openTheGuard(Handle handle) {
            handle.execute("drop trigger journal_keeps");
            handle.execute("drop trigger journal_grows");
        }
    }

    record OnServer(String url) implements Place {
        @Override
        public ShopData open() {
            return ShopData.open(url, CLOCK);
        }

        /** A trigger ends the writer's own connection in the middle of its transaction. */
        @Override
        public AutoCloseable fail(ShopData data) {
            data.database().writer().useHandle(handle -> {
                handle.execute("create function hang_up() returns trigger language plpgsql as"
                        + " $$ begin perform pg_terminate_backend(pg_backend_pid()); return new; end $$");
                handle.execute(
                        "create trigger hang_up before insert on journal for each row execute function hang_up()");
            });
            return () ->
                    data.database().writer().useHandle(handle -> handle.execute("drop trigger hang_up on journal"));
        }

        @Override
        public void openTheGuard(Handle handle) {
            handle.execute("drop trigger journal_grows on journal");
        }
    }
}
