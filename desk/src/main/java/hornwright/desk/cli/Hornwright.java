package hornwright.desk.cli;

import hornwright.desk.journal.Unusable;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Fault;
import hornwright.desk.json.Out;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;

/** The program as one command with its verbs; without a verb it serves the pages. */
@Command(
        name = "hornwright",
        mixinStandardHelpOptions = true,
        version = "hornwright " + Version.NUMBER,
        description = "Plans the restoration of a vintage saxophone.",
        sortOptions = false)
public final class Hornwright implements Callable<Integer> {
    @Option(names = "--json", scope = ScopeType.INHERIT, description = "machine-readable output and faults")
    private boolean json;

    private final Streams streams;
    private final Pages pages;

    private Hornwright(Streams streams, Pages pages) {
        this.streams = streams;
        this.pages = pages;
    }

    /** Whether the output is for a program. */
    boolean json() {
        return json;
    }

    @Override
    public Integer call() throws java.io.IOException {
        return new ServeCommand(streams, pages).call();
    }

    /** The command tree over the given streams. */
    public static CommandLine commandLine(Streams streams) {
        return commandLine(streams, Pages.none());
    }

    /** The command tree; {@code pages} is what {@code serve} starts. */
    public static CommandLine commandLine(Streams streams, Pages pages) {
        Hornwright root = new Hornwright(streams, pages);
        CommandLine line = new CommandLine(root)
                .addSubcommand(new ServeCommand(streams, pages))
                .addSubcommand(new WarmUpCommand(pages))
                .addSubcommand(new PlanCommand(streams))
                .addSubcommand(new ReckonCommand(streams))
                .addSubcommand(new ExampleCommand(streams))
                .addSubcommand(new CheckCommand(streams))
                .addSubcommand(new BackupCommand(streams))
                .addSubcommand(new RestoreCommand(streams))
                .addSubcommand(new ExportCommand(streams))
                .addSubcommand(new ImportCommand(streams))
                .addSubcommand(new EvidenceCommand(streams))
                .addSubcommand(new ShareCommand(streams))
                .addSubcommand(new ReceiveCommand(streams));
        line.setOut(new java.io.PrintWriter(streams.out(), true, java.nio.charset.StandardCharsets.UTF_8));
        line.setErr(new java.io.PrintWriter(streams.err(), true, java.nio.charset.StandardCharsets.UTF_8));
        line.setParameterExceptionHandler((failure, args) -> refuse(streams, failure));
        line.setExecutionExceptionHandler((failure, command, parsed) -> answer(streams, failure, root.json));
        return line;
    }

    public static int run(Streams streams, String... args) {
        return commandLine(streams).execute(args);
    }

    public static int run(Streams streams, Pages pages, String... args) {
        return commandLine(streams, pages).execute(args);
    }

    private static int refuse(Streams streams, ParameterException failure) {
        streams.err().println(failure.getMessage());
        streams.err().println("for example: hornwright example air, or: hornwright --help");
        return ExitCode.BAD_INPUT;
    }

    private static int answer(Streams streams, Exception failure, boolean json) throws Exception {
        if (failure instanceof BadInput bad) {
            tell(streams, bad.faults(), json);
            return ExitCode.BAD_INPUT;
        }
        if (failure instanceof Unusable unusable) {
            String why = String.valueOf(unusable.getMessage());
            streams.err().println(json ? Out.object().put("what", why).toString() : why);
            return unusable.isOnlyNow() ? ExitCode.SHORT : ExitCode.DAMAGED;
        }
        throw failure;
    }

    /** One line a fault on standard error; JSON lines with {@code --json}. */
    static void tell(Streams streams, List<Fault> faults, boolean json) {
        for (Fault fault : new ArrayList<>(faults)) {
            streams.err()
                    .println(
                            json
                                    ? Out.object()
                                            .put("pointer", fault.pointer())
                                            .put("what", fault.what())
                                            .put("example", fault.example())
                                            .toString()
                                    : fault.line());
        }
    }
}
