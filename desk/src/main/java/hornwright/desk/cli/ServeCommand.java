package hornwright.desk.cli;

import hornwright.desk.json.BadInput;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code serve}: the pages, on this machine's own address, until the program is stopped. */
@Command(name = "serve", mixinStandardHelpOptions = true, description = "Starts the pages and prints their address.")
final class ServeCommand implements Callable<Integer> {
    private static final int HIGHEST_PORT = 65_535;

    private final Streams streams;
    private final Pages pages;

    @Option(names = "--port", paramLabel = "N", description = "default 8420; 0 takes any free port")
    private int port = 8420;

    @Option(names = "--data", paramLabel = "DIR", description = "the folder of the shop; default ~/.hornwright")
    private Path data = Path.of(System.getProperty("user.home"), ".hornwright");

    @Option(names = "--db", paramLabel = "JDBC-URL", description = "a PostgreSQL database instead of a folder")
    private @Nullable String database;

    @ArgGroup
    private @Nullable Contents contents;

    @Option(names = "--open", description = "opens the address in the browser")
    private boolean open;

    /** One or the other. */
    static final class Contents {
        @Option(names = "--demo", description = "fills an empty shop with the demo (done on the first run anyway)")
        private boolean demo;

        @Option(names = "--empty", description = "leaves a new shop empty")
        private boolean empty;

        Pages.Filling filling() {
            return demo && !empty ? Pages.Filling.DEMO : Pages.Filling.EMPTY;
        }
    }

    ServeCommand(Streams streams, Pages pages) {
        this.streams = streams;
        this.pages = pages;
    }

    @Override
    public Integer call() throws IOException {
        if (port < 0 || port > HIGHEST_PORT) {
            throw new BadInput("", port + " is no port", "--port 8420, or --port 0 for any that is free");
        }
        Pages.Filling filling = contents == null ? Pages.Filling.DEMO_WHEN_NEW : contents.filling();
        try {
            Pages.Running running = pages.start(new Pages.Request(port, data, database, filling));
            Runtime.getRuntime().addShutdownHook(new Thread(running::close, "closing the shop"));
            streams.out().println(running.address());
            streams.out().flush();
            if (open) {
                openBrowser(running.address());
            }
            return ExitCode.STAYS;
        } catch (Pages.CannotServe refused) {
            streams.err().println(refused.getMessage());
            return ExitCode.SHORT;
        }
    }

    private void openBrowser(String address) {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        List<String> command = system.contains("mac")
                ? List.of("open", address)
                : system.contains("windows")
                        ? List.of("rundll32", "url.dll,FileProtocolHandler", address)
                        : List.of("xdg-open", address);
        try {
            new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            streams.err().println("No browser could be opened from here; open the address above.");
        }
    }
}
