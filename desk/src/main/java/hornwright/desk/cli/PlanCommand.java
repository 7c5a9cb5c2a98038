package hornwright.desk.cli;

import hornwright.bench.plan.Plan;
import hornwright.desk.jobfile.JobRequest;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Out;
import hornwright.desk.paper.BenchPaper;
import hornwright.desk.paper.PaperSize;
import hornwright.desk.paper.SheetHead;
import hornwright.desk.use.FillFolder;
import hornwright.desk.use.PlanJob;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
    private final Streams streams;

    @Parameters(index = "0", paramLabel = "JOB", description = "a job file; hornwright example job prints one")
    @SuppressWarnings("NullAway.Init")
    private Path job;

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "the folder for the files of the plan")
    @SuppressWarnings("NullAway.Init")
    private Path out;

    @Option(names = "--paper", paramLabel = "SIZE", defaultValue = "a4", description = "a4 (default) or letter")
    @SuppressWarnings("NullAway.Init")
    private String paper;

    @CommandLine.ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Hornwright root;

    PlanCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        Map<String, byte[]> files = new PlanJob(Version.NUMBER, sheets()).files(text());
        FillFolder.with(files, out);
        if (root.json()) {
            streams.out().println(Out.object().putTexts("files", paths(files)));
        } else {
            paths(files).forEach(streams.out()::println);
        }
        streams.out().flush();
        return ExitCode.DONE;
    }

    /** What is printed beside the lists. */
    private List<PlanJob.Sheet> sheets() {
        PaperSize size = Arrays.stream(PaperSize.values())
                .filter(known -> known.name().equalsIgnoreCase(paper))
                .findFirst()
                .orElseThrow(
                        () -> new BadInput("", "there is no paper called " + paper, "--paper a4 or --paper letter"));
        return Arrays.stream(BenchPaper.values())
                .<PlanJob.Sheet>map(sheet -> new Printed(sheet, size))
                .toList();
    }

    private record Printed(BenchPaper sheet, PaperSize size) implements PlanJob.Sheet {
        @Override
        public String fileName() {
            return sheet.fileName();
        }

        @Override
        public byte[] of(JobRequest job, Plan plan) {
            Long serial = job.inputs().serial();
            String line = Stream.of(serial == null ? "" : "Serial " + serial, job.shop())
                    .filter(part -> !part.isBlank())
                    .collect(Collectors.joining(" · "));
            return sheet.of(job.inputs().keywork(), plan, new SheetHead(job.title(), line), size);
        }
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
