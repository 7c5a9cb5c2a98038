package hornwright.desk.cli;

import hornwright.desk.json.Out;
import hornwright.desk.use.CheckShop;
import hornwright.desk.use.OpenShop;
import hornwright.desk.use.Shop;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;

/** {@code check}: whether everything the shop keeps is as it was written. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Looks through everything the shop keeps; exit 3 when something is damaged.")
final class CheckCommand implements Callable<Integer> {
    private final Streams streams;

    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Hornwright root;

    @Mixin
    private ShopPlace shop = new ShopPlace();

    CheckCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        CheckShop.Report report;
        try (Shop open = OpenShop.look(shop.where(), Clock.systemUTC())) {
            report = new CheckShop(open).check();
        }
        streams.out().println(root.json() ? json(report) : words(report));
        report.faults().forEach(root.json() ? fault -> {} : streams.err()::println);
        streams.out().flush();
        return report.faults().isEmpty() ? ExitCode.DONE : ExitCode.DAMAGED;
    }

    private static String words(CheckShop.Report report) {
        return "%d edits in %d streams, %d people, %d files: %s"
                .formatted(
                        report.edits(),
                        report.streams(),
                        report.people(),
                        report.files(),
                        report.faults().isEmpty()
                                ? "all as it was written"
                                : report.faults().size() == 1
                                        ? "1 fault"
                                        : report.faults().size() + " faults");
    }

    private static String json(CheckShop.Report report) {
        return Out.object()
                .put("edits", report.edits())
                .put("streams", report.streams())
                .put("people", report.people())
                .put("files", report.files())
                .putTexts("faults", report.faults())
                .toString();
    }
}
