package hornwright.desk.cli;

import hornwright.desk.json.Out;
import hornwright.desk.use.ExportJob;
import hornwright.desk.use.OpenShop;
import hornwright.desk.use.Shop;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code export JOB --out DIR}: tables, plain text and pictures; {@code import} is its inverse. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        description = "Writes a job as a folder anybody can read without this program.")
final class ExportCommand implements Callable<Integer> {
    private final Streams streams;

    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Hornwright root;

    @Mixin
    private ShopPlace shop = new ShopPlace();

    @Parameters(index = "0", paramLabel = "JOB", description = "an id from the shelf, such as q-0001")
    @SuppressWarnings("NullAway.Init")
    private String job;

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "a folder that does not exist yet")
    @SuppressWarnings("NullAway.Init")
    private Path out;

    ExportCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        try (Shop open = OpenShop.look(shop.where(), Clock.systemUTC())) {
            new ExportJob(open).to(job, out);
        }
        streams.out()
                .println(
                        root.json()
                                ? Out.object()
                                        .put("job", job)
                                        .put("folder", out.toString())
                                        .toString()
                                : "%s written to %s".formatted(job, out));
        streams.out().flush();
        return ExitCode.DONE;
    }
}
