package hornwright.desk.cli;

import hornwright.desk.journal.SqliteLibrary;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code warm-up}: opens a demo shop that is thrown away and walks its pages, so that the start-up cache learns them. */
@Command(name = "warm-up", hidden = true, description = "Walks the pages of a throw-away demo shop, then ends.")
final class WarmUpCommand implements Callable<Integer> {
    private static final Pattern LINK = Pattern.compile("(?:href|src)=\"(/[^\"#]*)\"");
    private static final int MOST_PAGES = 24;

    private final Pages pages;

    @Option(names = "--library", paramLabel = "DIR", description = "unpacks the library of the database there first")
    private @Nullable Path library;

    WarmUpCommand(Pages pages) {
        this.pages = pages;
    }

    @Override
    public Integer call() throws IOException, InterruptedException, Pages.CannotServe {
        if (library != null) {
            SqliteLibrary.unpackInto(library);
        }
        Path folder = Files.createTempDirectory("hornwright-warm-up");
        try (Pages.Running running = pages.start(new Pages.Request(0, folder, null, Pages.Filling.DEMO));
                HttpClient client = HttpClient.newHttpClient()) {
            walk(client, running.address());
        } finally {
            remove(folder);
        }
        return ExitCode.DONE;
    }

    private static void walk(HttpClient client, String address) throws IOException, InterruptedException {
        Set<String> seen = new LinkedHashSet<>(List.of("/"));
        for (int i = 0; i < seen.size() && i < MOST_PAGES; i++) {
            String path = List.copyOf(seen).get(i);
            HttpResponse<String> page = client.send(
                    HttpRequest.newBuilder(URI.create(address + path)).build(), HttpResponse.BodyHandlers.ofString());
            if (page.statusCode() != 200) {
                throw new IOException("warm-up: %s answered %d".formatted(path, page.statusCode()));
            }
            for (Matcher link = LINK.matcher(page.body()); link.find(); ) {
                seen.add(link.group(1).replace("&amp;", "&"));
            }
        }
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> inside = Files.walk(folder)) {
            inside.sorted(Comparator.reverseOrder()).forEach(file -> {
                try {
                    Files.delete(file);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
    }
}
