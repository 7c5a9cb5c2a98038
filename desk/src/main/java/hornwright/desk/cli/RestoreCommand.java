package hornwright.desk.cli;

import hornwright.desk.journal.Backup;
import hornwright.desk.use.BackUp;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code restore DIR}: the inverse of {@code backup}, into an empty folder or database of either kind. */
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        description = "Brings a backup back into a place where no shop is yet.")
final class RestoreCommand implements Callable<Integer> {
    private final Streams streams;

    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Hornwright root;

    @Mixin
    private ShopPlace shop = new ShopPlace();

    @Parameters(index = "0", paramLabel = "DIR", description = "the folder a backup was written to")
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    RestoreCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        Backup.Made made = BackUp.restore(folder, shop.where(), Clock.systemUTC());
        streams.out()
                .println(
                        root.json()
                                ? BackupCommand.json(made)
                                : "%d edits, %d people and %d files restored"
                                        .formatted(made.edits(), made.people(), made.files()));
        streams.out().flush();
        return ExitCode.DONE;
    }
}
