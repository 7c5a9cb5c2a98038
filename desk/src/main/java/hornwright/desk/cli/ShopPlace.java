package hornwright.desk.cli;

import hornwright.desk.use.OpenShop;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where the shop lies, as every command that needs one is told. */
final class ShopPlace {
    @Option(names = "--data", paramLabel = "DIR", description = "the folder of the shop; default ~/.hornwright")
    private Path data = Path.of(System.getProperty("user.home"), ".hornwright");

    @Option(names = "--db", paramLabel = "JDBC-URL", description = "a PostgreSQL database instead of a folder")
    private @Nullable String database;

    OpenShop.Where where() {
        return database == null ? new OpenShop.Where.Folder(data) : new OpenShop.Where.Server(database);
    }
}
