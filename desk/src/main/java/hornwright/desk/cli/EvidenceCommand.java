package hornwright.desk.cli;

import hornwright.desk.journal.Hand;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Fault;
import hornwright.desk.json.Out;
import hornwright.desk.use.Form;
import hornwright.desk.use.ImportEvidence;
import hornwright.desk.use.OpenShop;
import hornwright.desk.use.Saved;
import hornwright.desk.use.Shop;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code evidence FILE.csv}: a table of looks into the archive, all or nothing, one edit. */
@Command(
        name = "evidence",
        mixinStandardHelpOptions = true,
        description =
                "Brings a table of looks at horns into the archive; with --try it only says what would come of it.")
final class EvidenceCommand implements Callable<Integer> {
    private final Streams streams;

    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Hornwright root;

    @Mixin
    private ShopPlace shop = new ShopPlace();

    @Parameters(index = "0", paramLabel = "FILE", description = "a CSV file whose first line names the columns")
    @SuppressWarnings("NullAway.Init")
    private Path file;

    @Option(names = "--maker", paramLabel = "NAME", description = "whose horns they are when no column says it")
    private String maker = "";

    @Option(names = "--try", description = "writes nothing; says what would come of it")
    private boolean only;

    EvidenceCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        String text = text();
        try (Shop open = OpenShop.open(shop.where(), OpenShop.FirstRun.EMPTY, Clock.systemUTC())) {
            ImportEvidence verb = new ImportEvidence(open);
            ImportEvidence.Trial trial = verb.attempt(text, Map.of(), maker);
            if (!trial.isClean()) {
                throw new BadInput(trial.faults().stream()
                        .map(fault -> new Fault(
                                "/line " + fault.line() + "/" + fault.column(), fault.what(), fault.example()))
                        .toList());
            }
            Optional<Saved> saved = only
                    ? Optional.empty()
                    : verb.bringIn(
                            Form.once(open.archive().seq(), new Hand("command line", "command line")),
                            String.valueOf(file.getFileName()),
                            trial);
            streams.out().println(root.json() ? json(trial, saved.isPresent()) : words(trial, saved.isPresent()));
            streams.out().flush();
            return ExitCode.DONE;
        }
    }

    private String text() {
        try {
            return Files.readString(file);
        } catch (NoSuchFileException none) {
            throw new BadInput("", "there is no file " + file, "looks.csv");
        } catch (MalformedInputException other) {
            throw new BadInput("", file + " is not UTF-8", "the table saved as CSV UTF-8");
        } catch (IOException e) {
            throw new BadInput("", "cannot read " + file + ": " + e.getMessage(), "a CSV file");
        }
    }

    private static String words(ImportEvidence.Trial trial, boolean kept) {
        return "%d rows: %d new horns, %d new looks, %d known; %s"
                .formatted(
                        trial.rows(),
                        trial.horns().size(),
                        trial.looks().size(),
                        trial.known(),
                        kept ? "brought in" : "nothing written");
    }

    private static String json(ImportEvidence.Trial trial, boolean kept) {
        return Out.object()
                .put("rows", trial.rows())
                .put("horns", trial.horns().size())
                .put("looks", trial.looks().size())
                .put("known", trial.known())
                .put("kept", kept)
                .toString();
    }
}
