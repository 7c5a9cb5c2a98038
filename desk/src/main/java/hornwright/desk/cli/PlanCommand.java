package hornwright.desk.cli;

import hornwright.desk.json.BadInput;
import hornwright.desk.json.Out;
import hornwright.desk.use.FillFolder;
import hornwright.desk.use.PlanJob;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code plan JOB.json --out DIR}: plans one horn from a file, without a shop. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description = "Plans the horn of a job file and writes the plan, its lists and its sheets into a folder.")
final class PlanCommand implements Callable<Integer> {
    /** What is printed beside the lists; a sheet is added here and nowhere else. */
    private static final List<PlanJob.Sheet> SHEETS = List.of();

    private final Streams streams;

    @Parameters(index = "0", paramLabel = "JOB", description = "a job file; hornwright example job prints one")
    @SuppressWarnings("NullAway.Init")
    private Path job;

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "the folder for the files of the plan")
    @SuppressWarnings("NullAway.Init")
    private Path out;

    @CommandLine.ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Hornwright root;

    PlanCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        Map<String, byte[]> files = new PlanJob(Version.NUMBER, SHEETS).files(text());
        FillFolder.with(files, out);
        if (root.json()) {
            streams.out().println(Out.object().putTexts("files", paths(files)));
        } else {
            paths(files).forEach(streams.out()::println);
        }
        streams.out().flush();
        return ExitCode.DONE;
    }

    private List<String> paths(Map<String, byte[]> files) {
        return files.keySet().stream().map(name -> out.resolve(name).toString()).toList();
    }

    private String text() throws IOException {
        try {
            return Files.readString(job);
        } catch (NoSuchFileException missing) {
            throw new BadInput("", "there is no file " + job, "a file that exists");
        }
    }
}
