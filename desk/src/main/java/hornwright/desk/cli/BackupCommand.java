package hornwright.desk.cli;

import hornwright.desk.journal.Backup;
import hornwright.desk.json.Out;
import hornwright.desk.use.BackUp;
import hornwright.desk.use.OpenShop;
import hornwright.desk.use.Shop;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code backup DIR}: a copy of everything, made while the program works and read back at once. */
@Command(
        name = "backup",
        mixinStandardHelpOptions = true,
        description = "Copies everything the shop keeps to a new folder and proves that it can be restored.")
final class BackupCommand implements Callable<Integer> {
    private final Streams streams;

    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Hornwright root;

    @Mixin
    private ShopPlace shop = new ShopPlace();

    @Parameters(index = "0", paramLabel = "DIR", description = "a folder that does not exist yet")
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    BackupCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        try (Shop open = OpenShop.look(shop.where(), Clock.systemUTC())) {
            Backup.Made made = new BackUp(open).to(folder);
            streams.out()
                    .println(
                            root.json()
                                    ? json(made)
                                    : "%d edits, %d people and %d files in %s, read back and whole"
                                            .formatted(made.edits(), made.people(), made.files(), made.folder()));
            streams.out().flush();
            return ExitCode.DONE;
        }
    }

    static String json(Backup.Made made) {
        return Out.object()
                .put("folder", made.folder().toString())
                .put("edits", made.edits())
                .put("people", made.people())
                .put("files", made.files())
                .toString();
    }
}
