package hornwright.browser;

import hornwright.desk.Main;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The program as a process of its own, with its data in a folder; it can be killed as a power cut kills it. */
final class Program implements AutoCloseable {
    private final Process process;
    private final String address;

    private Program(Process process, String address) {
        this.process = process;
        this.address = address;
    }

    static Program start(Path folder, String... options) throws IOException {
        return startAt(0, folder, options);
    }

    /** With its pages in that language. */
    static Program startIn(String language, Path folder, String... options) throws IOException {
        return startAt(0, Map.of("HORNWRIGHT_LANGUAGE", language), folder, options);
    }

    /** On that port, as when somebody starts it again where it was. */
    static Program startAt(int port, Path folder, String... options) throws IOException {
        return startAt(port, Map.of(), folder, options);
    }

    private static Program startAt(int port, Map<String, String> settings, Path folder, String... options)
            throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "--enable-native-access=ALL-UNNAMED",
                "-cp",
                classPath(),
                Main.class.getName(),
                "serve",
                "--port",
                Integer.toString(port),
                "--data",
                folder.toString()));
        command.addAll(List.of(options));
        ProcessBuilder builder = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT);
        builder.environment().putAll(settings);
        Process process = builder.start();
        BufferedReader out =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        String address = out.readLine();
        if (address == null) {
            throw new IOException("the program ended before it told its address");
        }
        return new Program(process, address);
    }

    String address() {
        return address;
    }

    /** Ends it as kill -9 does: nothing of it runs any more, nothing is flushed. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    /** Puts a horn on the shelf and gives the path of its page. */
    String newHorn(String pattern, String serial) throws IOException, InterruptedException {
        return post("/horns", Map.of("pattern", pattern, "serial", serial, "use", "WORKING"));
    }

    /** A page as text. */
    String get(String path) throws IOException, InterruptedException {
        try (HttpClient client = HttpClient.newHttpClient()) {
            return client.send(
                            HttpRequest.newBuilder(URI.create(address + path)).build(),
                            HttpResponse.BodyHandlers.ofString())
                    .body();
        }
    }

    /** Posts a form as one of the program's own pages would and gives the path it leads to. */
    String post(String path, Map<String, String> fields) throws IOException, InterruptedException {
        String form = fields.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
        try (HttpClient client = HttpClient.newHttpClient()) {
            HttpResponse<String> answer = client.send(
                    HttpRequest.newBuilder(URI.create(address + path))
                            .header("Origin", address)
                            .header("Content-Type", "application/x-www-form-urlencoded")
                            .POST(HttpRequest.BodyPublishers.ofString(form))
                            .build(),
                    HttpResponse.BodyHandlers.ofString());
            if (answer.statusCode() != 303) {
                throw new IOException("%s answered %d: %s".formatted(path, answer.statusCode(), answer.body()));
            }
            return answer.headers().firstValue("Location").orElseThrow();
        }
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /** The class path of this very test, also when a test runner gave it to a class loader of its own. */
    private static String classPath() {
        return Program.class.getClassLoader() instanceof URLClassLoader loader
                ? Arrays.stream(loader.getURLs()).map(URL::getPath).collect(Collectors.joining(":"))
                : System.getProperty("java.class.path");
    }
}
