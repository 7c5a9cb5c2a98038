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

    record InFolder(Path folder) implements Place {
        @Override
        public ShopData open() {
            return ShopData.open(DataFolder.take(folder), CLOCK);
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

        @Override
        public void openTheGuard(Handle handle) {
            handle.execute("drop trigger journal_grows on journal");
        }
    }
}
