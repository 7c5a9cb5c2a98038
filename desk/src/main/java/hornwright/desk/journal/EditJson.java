package hornwright.desk.journal;

import hornwright.bench.job.Edit;
import hornwright.bench.job.Kind;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * Edits as strict JSON. The words come from each record's {@link Kind}, found by walking the sealed interface, so a new
 * edit cannot be forgotten here. A field nobody knows, a field twice, or text after the end is a fault, never ignored.
 */
public final class EditJson {
    private static final Map<String, Class<? extends Edit>> BY_WORD = byWord();
    private static final JsonMapper MAPPER = EditMapper.strict();

    private EditJson() {}

    /** What a stored row reads as. */
    public sealed interface Read {
        record Known(Edit edit) implements Read {}

        /** A kind or version that only a newer program knows. */
        record Unknown(String kind, int version) implements Read {}
    }

    static Kind kindOf(Edit edit) {
        return kindOf(edit.getClass());
    }

    static String write(Edit edit) {
        return MAPPER.writeValueAsString(edit);
    }

    static boolean knows(String word, int version) {
        Class<? extends Edit> type = BY_WORD.get(word);
        return type != null && version <= kindOf(type).version();
    }

    /** Reads a row; a kind that is known but does not parse is damage, not news from the future. */
    public static Read read(Entry entry) {
        if (!knows(entry.kind(), entry.version())) {
            return new Read.Unknown(entry.kind(), entry.version());
        }
        try {
            return new Read.Known(known(entry.kind(), entry.version(), entry.edit()));
        } catch (Unusable e) {
            throw new Unusable(
                    "Edit %d of %s (%s) cannot be read: %s"
                            .formatted(entry.seq(), entry.stream(), entry.kind(), e.getMessage()),
                    e);
        }
    }

    /** {@link Unusable} when something required is missing from a value read by {@link #mapper}. */
    public static void requireWhole(Object value) {
        String missing = Whole.missing(value);
        if (missing != null) {
            throw new Unusable(missing + " is missing");
        }
    }

    /** An edit this program knows, from its kind, version and JSON; the message of {@link Unusable} says why not. */
    public static Edit known(String kind, int version, String json) {
        if (!knows(kind, version)) {
            throw new Unusable("'%s', version %d, is not an edit this program knows".formatted(kind, version));
        }
        try {
            Edit edit = MAPPER.readValue(json, Objects.requireNonNull(BY_WORD.get(kind)));
            requireWhole(edit);
            return edit;
        } catch (JacksonException e) {
            throw new Unusable(String.valueOf(e.getOriginalMessage()), e);
        }
    }

    /** The strict mapper, for everything else this program keeps as JSON. */
    public static JsonMapper mapper() {
        return MAPPER;
    }

    /** Every kind of edit there is, with its version. */
    static Collection<Kind> kinds() {
        return BY_WORD.values().stream().map(EditJson::kindOf).toList();
    }

    private static Kind kindOf(Class<? extends Edit> type) {
        return Objects.requireNonNull(type.getAnnotation(Kind.class), type.getName() + " has no @Kind");
    }

    private static Map<String, Class<? extends Edit>> byWord() {
        Map<String, Class<? extends Edit>> found = new TreeMap<>();
        for (Class<? extends Edit> type : records(Edit.class)) {
            Class<? extends Edit> other = found.put(kindOf(type).word(), type);
            if (other != null && other != type) {
                throw new IllegalStateException("%s and %s share one word".formatted(other, type));
            }
        }
        return found;
    }

    private static List<Class<? extends Edit>> records(Class<?> type) {
        if (type.isRecord()) {
            return List.of(type.asSubclass(Edit.class));
        }
        List<Class<? extends Edit>> found = new ArrayList<>();
        Stream.of(type.getPermittedSubclasses()).forEach(permitted -> found.addAll(records(permitted)));
        return found;
    }
}
