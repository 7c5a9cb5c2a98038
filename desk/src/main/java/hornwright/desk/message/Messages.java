package hornwright.desk.message;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The texts of one language. The first word of a key names the file it stands in: {@code help.rules.question}. */
public final class Messages {
    private static final Pattern PART = Pattern.compile("\\{(\\d)}");

    private final String language;
    private final Map<String, Map<String, String>> files = new ConcurrentHashMap<>();

    public Messages(String language) {
        this.language = language;
    }

    /** The text of that key, each {@code {0}} in it replaced by the part of that number. */
    public String say(String key, Object... parts) {
        return filled(
                find(key).orElseThrow(() -> new IllegalArgumentException("no text is called \"%s\"".formatted(key))),
                parts);
    }

    /** The text of that key as it stands in its file, if there is one. */
    public Optional<String> find(String key) {
        int dot = key.indexOf('.');
        return Optional.ofNullable(file(dot < 0 ? key : key.substring(0, dot)).get(key));
    }

    /** All texts of one file by their keys; empty when there is no such file. */
    public Map<String, String> file(String name) {
        return files.computeIfAbsent(name, this::read);
    }

    private Map<String, String> read(String name) {
        String path = "/hornwright/messages/%s/%s.properties".formatted(language, name);
        try (InputStream stream = Messages.class.getResourceAsStream(path)) {
            if (stream == null) {
                return Map.of();
            }
            Properties read = new Properties();
            read.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
            return read.entrySet().stream().collect(Collectors.toUnmodifiableMap(text -> (String) text.getKey(), text ->
                    (String) text.getValue()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String filled(String text, Object... parts) {
        return PART.matcher(text).replaceAll(part -> {
            int at = Integer.parseInt(part.group(1));
            return Matcher.quoteReplacement(at < parts.length ? String.valueOf(parts[at]) : part.group());
        });
    }
}
