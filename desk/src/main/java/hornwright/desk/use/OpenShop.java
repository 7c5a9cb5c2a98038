package hornwright.desk.use;

import hornwright.desk.journal.DataFolder;
import hornwright.desk.journal.Hand;
import hornwright.desk.journal.ShopData;
import java.nio.file.Path;
import java.time.Clock;

/** Opens the database, and on the very first run furnishes the shop. */
public final class OpenShop {
    /** Where a shop's data lies. */
    public sealed interface Where {
        /** A folder of this machine, with the embedded database. */
        record Folder(Path path) implements Where {}

        /** A PostgreSQL database. */
        record Server(String jdbcUrl) implements Where {}
    }

    /** What a new shop is filled with. */
    public enum FirstRun {
        DEMO,
        EMPTY
    }

    /** The program's own hand, for what it does without being asked. */
    static final Hand PROGRAM = new Hand("program", "program");

    private OpenShop() {}

    /** The shop, to be closed by the caller. {@link hornwright.desk.journal.Unusable} when it cannot be opened. */
    public static Shop open(Where where, FirstRun firstRun, Clock clock) {
        ShopData data = switch (where) {
            case Where.Folder folder -> ShopData.open(DataFolder.take(folder.path()), clock);
            case Where.Server server -> ShopData.open(server.jdbcUrl(), clock);
        };
        try {
            Shop shop = Shop.over(data);
            if (data.journal().head() == 0) {
                switch (firstRun) {
                    case DEMO -> new DemoShop(shop).fill();
                    case EMPTY -> new FurnishShop(shop).name(Form.once(0, PROGRAM), "");
                }
            }
            return shop;
        } catch (RuntimeException e) {
            data.close();
            throw e;
        }
    }
}
