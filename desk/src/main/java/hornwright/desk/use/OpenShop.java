package hornwright.desk.use;

import hornwright.desk.journal.DataFolder;
import hornwright.desk.journal.Hand;
import hornwright.desk.journal.ShopData;
import hornwright.desk.json.BadInput;
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
        /** Also when the shop was opened before, as long as no horn was ever taken in. */
        DEMO_UNTIL_A_JOB,
        EMPTY
    }

    /** The program's own hand, for what it does without being asked. */
    static final Hand PROGRAM = new Hand("program", "program");

    private OpenShop() {}

    /** The shop, only to be read; a program that is using it may go on. {@link BadInput} when there is none. */
    public static Shop look(Where where, Clock clock) {
        return switch (where) {
            case Where.Folder folder -> {
                if (!DataFolder.holdsShop(folder.path())) {
                    throw new BadInput("", "there is no shop in " + folder.path(), "a folder that serve has used");
                }
                yield looking(ShopData.lookInto(folder.path(), clock));
            }
            case Where.Server server -> looking(ShopData.open(server.jdbcUrl(), clock));
        };
    }

    private static Shop looking(ShopData data) {
        try {
            return Shop.lookInto(data);
        } catch (RuntimeException e) {
            data.close();
            throw e;
        }
    }

    /** The shop, to be closed by the caller. {@link hornwright.desk.journal.Unusable} when it cannot be opened. */
    public static Shop open(Where where, FirstRun firstRun, Clock clock) {
        ShopData data = data(where, clock);
        try {
            Shop shop = Shop.over(data);
            furnish(shop, firstRun);
            return shop;
        } catch (RuntimeException e) {
            data.close();
            throw e;
        }
    }

    private static void furnish(Shop shop, FirstRun firstRun) {
        boolean untouched = shop.data().journal().head() == 0;
        boolean demo = switch (firstRun) {
            case DEMO -> untouched;
            case DEMO_UNTIL_A_JOB -> shop.data().journal().lastOfJobs() == 0;
            case EMPTY -> false;
        };
        if (demo) {
            new DemoShop(shop).fill();
        } else if (untouched) {
            new FurnishShop(shop).name(Form.once(0, PROGRAM), "");
        }
    }

    static ShopData data(Where where, Clock clock) {
        return switch (where) {
            case Where.Folder folder -> ShopData.open(DataFolder.take(folder.path()), clock);
            case Where.Server server -> ShopData.open(server.jdbcUrl(), clock);
        };
    }
}
