package hornwright.desk.cli;

import hornwright.desk.bag.UnreadableBag;
import hornwright.desk.journal.Hand;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Fault;
import hornwright.desk.json.Out;
import hornwright.desk.use.Form;
import hornwright.desk.use.OpenShop;
import hornwright.desk.use.ReceiveArchive;
import hornwright.desk.use.Saved;
import hornwright.desk.use.Shop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code receive FILE}: what another shop packed, taken in as one edit. */
@Command(
        name = "receive",
        mixinStandardHelpOptions = true,
        description = "Takes in what another shop packed with share; with --try it only says what would come of it.")
final class ReceiveCommand implements Callable<Integer> {
    private static final long LARGEST = 256L << 20;

    private final Streams streams;

    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Hornwright root;

    @Mixin
    private ShopPlace shop = new ShopPlace();

    @Parameters(index = "0", paramLabel = "FILE", description = "a zip that share has written")
    @SuppressWarnings("NullAway.Init")
    private Path file;

    @Option(names = "--try", description = "writes nothing; says what would come of it")
    private boolean only;

    ReceiveCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        byte[] zip = bytes();
        try (Shop open = OpenShop.open(shop.where(), OpenShop.FirstRun.EMPTY, Clock.systemUTC())) {
            Form form = Form.once(open.archive().seq(), new Hand("command line", "command line"));
            ReceiveArchive.Outcome outcome = new ReceiveArchive(open).receive(form, zip, only);
            boolean kept = outcome.saved().filter(Saved.Kept.class::isInstance).isPresent();
            streams.out().println(root.json() ? json(outcome, kept) : words(outcome, kept));
            if (!root.json()) {
                outcome.conflicts().forEach(streams.err()::println);
            }
            streams.out().flush();
            return outcome.conflicts().isEmpty() ? ExitCode.DONE : ExitCode.SHORT;
        } catch (UnreadableBag bag) {
            throw new BadInput(bag.reasons().stream()
                    .map(reason -> new Fault("", reason, "a zip that share has written"))
                    .toList());
        }
    }

    private byte[] bytes() {
        try {
            if (Files.size(file) > LARGEST) {
                throw new BadInput("", file + " is larger than 256 megabytes", "one maker at a time: share --maker");
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException none) {
            throw new BadInput("", "there is no file " + file, "evidence.zip");
        } catch (IOException e) {
            throw new BadInput("", "cannot read " + file + ": " + e.getMessage(), "evidence.zip");
        }
    }

    private static String words(ReceiveArchive.Outcome outcome, boolean kept) {
        return "from %s: %d new, %d changed by their author, %d known, %d told differently; %s"
                .formatted(
                        outcome.from(),
                        outcome.fresh(),
                        outcome.changed(),
                        outcome.known(),
                        outcome.conflicts().size(),
                        kept ? "taken in" : "nothing written");
    }

    private static String json(ReceiveArchive.Outcome outcome, boolean kept) {
        return Out.object()
                .put("from", outcome.from())
                .put("new", outcome.fresh())
                .put("changed", outcome.changed())
                .put("known", outcome.known())
                .putTexts("conflicts", outcome.conflicts())
                .put("kept", kept)
                .toString();
    }
}
