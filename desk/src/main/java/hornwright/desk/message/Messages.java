package hornwright.desk.message;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The texts of one language. The first word of a key names the file it stands in: {@code help.rules.question}. What a
 * language lacks is said in English.
 */
public final class Messages {
    private static final String ENGLISH = "en";
    private static final String PSEUDO = "pseudo";
    private static final Pattern PART = Pattern.compile("\\{(\\d)}");

    private final String language;
    private final String tag;
    private final UnaryOperator<String> spoken;
    private final Map<String, Map<String, String>> files = new ConcurrentHashMap<>();

    private Messages(String language, String tag, UnaryOperator<String> spoken) {
        this.language = language;
        this.tag = tag;
        this.spoken = spoken;
    }

    public static Messages english() {
        return new Messages(ENGLISH, ENGLISH, UnaryOperator.identity());
    }

    /** English made strange and two fifths longer, to see what would not fit and what was not said by its key. */
    public static Messages pseudo() {
        return new Messages(ENGLISH, "en-x-pseudo", Pseudo::of);
    }

    /** The texts of that language, "pseudo" among them; none when there are no files of it. */
    public static Optional<Messages> in(String language) {
        if (language.equals(PSEUDO)) {
            return Optional.of(pseudo());
        }
        return language.matches("[a-z]{2,3}") && Messages.class.getResource(path(language, "frame")) != null
                ? Optional.of(new Messages(language, language, UnaryOperator.identity()))
                : Optional.empty();
    }

    /** As it stands in a page's {@code lang}. Source: IETF BCP 47. */
    public String tag() {
        return tag;
    }

    /** The text of that key, each {@code {0}} in it replaced by the part of that number. */
    public String say(String key, @Nullable Object... parts) {
        return filled(
                find(key).orElseThrow(() -> new IllegalArgumentException("no text is called \"%s\"".formatted(key))),
                parts);
    }

    /** The text of that key with its parts still open, if there is one. */
    public Optional<String> find(String key) {
        int dot = key.indexOf('.');
        return Optional.ofNullable(file(dot < 0 ? key : key.substring(0, dot)).get(key));
    }

    /** All texts of one file by their keys; empty when there is no such file. */
    public Map<String, String> file(String name) {
        return files.computeIfAbsent(name, this::spoken);
    }

    private Map<String, String> spoken(String name) {
        Map<String, String> texts = new HashMap<>(read(ENGLISH, name));
        texts.putAll(read(language, name));
        texts.replaceAll((key, text) -> spoken.apply(text));
        return Map.copyOf(texts);
    }

    private static Map<String, String> read(String language, String name) {
        try (InputStream stream = Messages.class.getResourceAsStream(path(language, name))) {
            if (stream == null) {
                return Map.of();
            }
            Properties read = new Properties();
            read.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
            Map<String, String> texts = new HashMap<>();
            read.stringPropertyNames().forEach(key -> texts.put(key, read.getProperty(key)));
            return texts;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String path(String language, String name) {
        return "/hornwright/messages/%s/%s.properties".formatted(language, name);
    }

    private static String filled(String text, @Nullable Object... parts) {
        return PART.matcher(text).replaceAll(part -> {
            int at = Integer.parseInt(part.group(1));
            return Matcher.quoteReplacement(at < parts.length ? Objects.toString(parts[at], "") : part.group());
        });
    }
}
