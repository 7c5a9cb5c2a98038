package hornwright.desk.cli;

import hornwright.bench.job.Job;
import hornwright.desk.journal.Hand;
import hornwright.desk.json.Out;
import hornwright.desk.use.ImportJob;
import hornwright.desk.use.OpenShop;
import hornwright.desk.use.Shop;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code import DIR}: a job from a folder {@code export} has written, under the next number of this shop. */
@Command(
        name = "import",
        mixinStandardHelpOptions = true,
        description = "Reads an exported folder back as a job of this shop.")
final class ImportCommand implements Callable<Integer> {
    private final Streams streams;

    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Hornwright root;

    @Mixin
    private ShopPlace shop = new ShopPlace();

    @Parameters(index = "0", paramLabel = "DIR", description = "a folder that export has written")
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    ImportCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        try (Shop open = OpenShop.open(shop.where(), OpenShop.FirstRun.EMPTY, Clock.systemUTC())) {
            Job job = new ImportJob(open).from(folder, new Hand("command line", "command line"));
            streams.out()
                    .println(
                            root.json()
                                    ? Out.object()
                                            .put("job", job.id())
                                            .put("title", job.title())
                                            .toString()
                                    : "%s is %s now".formatted(job.title(), job.id()));
            streams.out().flush();
            return ExitCode.DONE;
        }
    }
}
