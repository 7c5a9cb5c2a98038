package hornwright.desk.cli;

import hornwright.desk.json.BadInput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code example [NAME]}: prints an input that works; without a name it lists them. */
@Command(
        name = "example",
        mixinStandardHelpOptions = true,
        description = "Prints an example input; without NAME lists them.")
final class ExampleCommand implements Callable<Integer> {
    private static final String FOLDER = "/hornwright/examples/";

    private final Streams streams;

    @Parameters(index = "0", paramLabel = "NAME", arity = "0..1", description = "job, job-ten-minutes, air, seat, …")
    private @Nullable String name;

    ExampleCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        if (name == null) {
            names().forEach(streams.out()::println);
            return ExitCode.DONE;
        }
        if (!names().contains(name.toLowerCase(Locale.ROOT))) {
            throw new BadInput("", "there is no example \"" + name + "\"", "one of " + String.join(", ", names()));
        }
        streams.out()
                .println(resource(FOLDER + name.toLowerCase(Locale.ROOT) + ".json")
                        .strip());
        streams.out().flush();
        return ExitCode.DONE;
    }

    /** The examples in the order of the index, which a test compares with the folder. */
    static List<String> names() throws IOException {
        return resource(FOLDER + "index.txt")
                .lines()
                .filter(line -> !line.isBlank())
                .toList();
    }

    private static String resource(String path) throws IOException {
        try (InputStream stream = ExampleCommand.class.getResourceAsStream(path)) {
            if (stream == null) {
                throw new IOException("the program lacks its own file " + path);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
