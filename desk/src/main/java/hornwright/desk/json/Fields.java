package hornwright.desk.json;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * The fields of one JSON object, asked for by name. A fault is noted and a harmless stand-in returned, so that the
 * rest is still checked; nothing may be computed before {@link Faults#refuseIfAny()}. Null counts as absent. Fields
 * nobody asked for are faults when {@link #read} ends.
 */
public final class Fields {
    private static final double STAND_IN = 1;

    private final JsonNode node;
    private final String pointer;
    private final Faults faults;
    private final Set<String> asked = new LinkedHashSet<>();

    private Fields(JsonNode node, String pointer, Faults faults) {
        this.node = node;
        this.pointer = pointer;
        this.faults = faults;
    }

    /** The fields of {@code node}, which stands at {@code pointer}; a fault if it is no object. */
    public static Fields of(JsonNode node, String pointer, Faults faults) {
        if (!node.isObject()) {
            faults.add(pointer, "this must be an object, it is " + shown(node), "{ … }");
            return new Fields(JsonNodeFactory.instance.objectNode(), pointer, faults);
        }
        return new Fields(node, pointer, faults);
    }

    /** Reads the object by {@code reader} and then refuses the fields nobody asked for. */
    public <T> T read(Function<Fields, T> reader) {
        T value = reader.apply(this);
        for (String name : node.propertyNames()) {
            if (!asked.contains(name)) {
                faults.add(at(name), "unknown field", UnknownField.suggestion(name, asked));
            }
        }
        return value;
    }

    public boolean has(String name) {
        return present(name) != null;
    }

    /** A required number. */
    public double number(String name, Bound bound, String example) {
        JsonNode found = present(name);
        if (found == null) {
            faults.add(at(name), "missing", quoted(name, example));
            return STAND_IN;
        }
        return checked(name, found, bound, example);
    }

    /** A number with a default. */
    public double numberOr(String name, double absent, Bound bound, String example) {
        JsonNode found = present(name);
        return found == null ? absent : checked(name, found, bound, example);
    }

    /** A number that may be absent. */
    public @Nullable Double numberIfAny(String name, Bound bound, String example) {
        JsonNode found = present(name);
        return found == null ? null : Double.valueOf(checked(name, found, bound, example));
    }

    /** A required whole number within the range of int. */
    public int whole(String name, Bound bound, String example) {
        return asInt(name, number(name, bound, example), example);
    }

    public int wholeOr(String name, int absent, Bound bound, String example) {
        return asInt(name, numberOr(name, absent, bound, example), example);
    }

    private int asInt(String name, double value, String example) {
        if (value != Math.rint(value) || Math.abs(value) > Integer.MAX_VALUE) {
            faults.add(at(name), value + " is not a whole number that fits", quoted(name, example));
            return (int) STAND_IN;
        }
        return (int) value;
    }

    /** A required text that is not blank. */
    public String text(String name, String example) {
        String found = textIfAny(name, example);
        if (found == null) {
            if (present(name) == null) {
                faults.add(at(name), "missing", quoted(name, "\"" + example + "\""));
            }
            return example;
        }
        return found;
    }

    public String textOr(String name, String absent, String example) {
        String found = textIfAny(name, example);
        return found == null ? absent : found;
    }

    public @Nullable String textIfAny(String name, String example) {
        JsonNode found = present(name);
        if (found == null) {
            return null;
        }
        if (!found.isString() || found.stringValue().isBlank()) {
            faults.add(at(name), "this must be a text, it is " + shown(found), quoted(name, "\"" + example + "\""));
            return null;
        }
        return found.stringValue();
    }

    public boolean flagOr(String name, boolean absent) {
        JsonNode found = present(name);
        if (found == null) {
            return absent;
        }
        if (!found.isBoolean()) {
            faults.add(at(name), "this must be true or false, it is " + shown(found), quoted(name, "true"));
            return absent;
        }
        return found.booleanValue();
    }

    /** One of a few words. */
    public <E> E choice(String name, Map<String, E> words) {
        if (present(name) == null) {
            String first = words.keySet().iterator().next();
            faults.add(at(name), "missing", quoted(name, "\"" + first + "\""));
            return words.values().iterator().next();
        }
        return choiceOr(name, words, words.values().iterator().next());
    }

    public <E> E choiceOr(String name, Map<String, E> words, E absent) {
        JsonNode found = present(name);
        if (found == null) {
            return absent;
        }
        E chosen = found.isString() ? words.get(found.stringValue()) : null;
        if (chosen == null) {
            faults.add(
                    at(name),
                    shown(found) + " is not one of " + String.join(", ", words.keySet()),
                    quoted(name, "\"" + words.keySet().iterator().next() + "\""));
            return absent;
        }
        return chosen;
    }

    /** A required object. */
    public <T> T object(String name, Function<Fields, T> reader) {
        JsonNode found = present(name);
        if (found == null) {
            faults.add(at(name), "missing", quoted(name, "{ … }"));
            found = JsonNodeFactory.instance.objectNode();
            return new Fields(found, at(name), new Faults()).read(reader);
        }
        return of(found, at(name), faults).read(reader);
    }

    public <T> @Nullable T objectIfAny(String name, Function<Fields, T> reader) {
        JsonNode found = present(name);
        return found == null ? null : of(found, at(name), faults).read(reader);
    }

    /** A list of objects; absent counts as empty. */
    public <T> List<T> list(String name, Function<Fields, T> reader) {
        return elements(name, (element, where) -> of(element, where, faults).read(reader));
    }

    /** A required list of at least one object. */
    public <T> List<T> someOf(String name, Function<Fields, T> reader) {
        List<T> found = list(name, reader);
        if (found.isEmpty() && (present(name) == null || node.get(name).isArray())) {
            faults.add(at(name), "this list needs at least one entry", quoted(name, "[ { … } ]"));
        }
        return found;
    }

    /** A list of texts; absent counts as empty. */
    public List<String> texts(String name) {
        return elements(name, (element, where) -> {
            if (!element.isString()) {
                faults.add(where, "this must be a text, it is " + shown(element), "\"low-b\"");
                return "";
            }
            return element.stringValue();
        });
    }

    /** A list of numbers; absent counts as empty. */
    public List<Double> numbers(String name, Bound bound, String example) {
        return elements(name, (element, where) -> {
            if (!element.isNumber() || !bound.allows(element.doubleValue())) {
                faults.add(where, shown(element) + " must be " + bound.words(), example);
                return STAND_IN;
            }
            return element.doubleValue();
        });
    }

    private <T> List<T> elements(String name, BiFunction<JsonNode, String, T> reader) {
        JsonNode found = present(name);
        List<T> all = new ArrayList<>();
        if (found == null) {
            return all;
        }
        if (!found.isArray()) {
            faults.add(at(name), "this must be a list, it is " + shown(found), quoted(name, "[ … ]"));
            return all;
        }
        for (int i = 0; i < found.size(); i++) {
            all.add(reader.apply(found.get(i), at(name) + "/" + i));
        }
        return all;
    }

    /** A fault unless exactly one of {@code names} is present; returns the one that is, or the first. */
    public String oneOf(String... names) {
        List<String> there = List.of(names).stream().filter(this::has).toList();
        if (there.size() != 1) {
            String all = String.join(" | ", names);
            faults.add(
                    pointer,
                    "exactly one of " + all + " is needed, there "
                            + (there.isEmpty() ? "is none" : "are " + there.size()),
                    quoted(names[0], "…"));
        }
        return there.isEmpty() ? names[0] : there.getFirst();
    }

    /** Notes a fault at a field, for rules that need more than one field. */
    public void fault(String name, String what, String example) {
        faults.add(name.isEmpty() ? pointer : at(name), what, example);
    }

    /** Notes a fault at one entry of a list. */
    public void faultIn(String list, int index, String what, String example) {
        faults.add(at(list) + "/" + index, what, example);
    }

    /** Notes a fault for every id that stands twice in the list {@code name}. */
    public void uniqueIds(String name, List<String> ids) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < ids.size(); i++) {
            if (!seen.add(ids.get(i))) {
                faults.add(
                        at(name) + "/" + i + "/id",
                        "the id \"" + ids.get(i) + "\" stands twice in this list",
                        "\"" + ids.get(i) + "-2\"");
            }
        }
    }

    public String pointer() {
        return pointer;
    }

    public Faults faults() {
        return faults;
    }

    /** The raw value at a field, for shapes the other methods do not know; null when absent. */
    public @Nullable JsonNode raw(String name) {
        return present(name);
    }

    private @Nullable JsonNode present(String name) {
        asked.add(name);
        JsonNode found = node.get(name);
        return found == null || found.isNull() ? null : found;
    }

    private double checked(String name, JsonNode found, Bound bound, String example) {
        if (!found.isNumber()) {
            faults.add(at(name), "this must be a number, it is " + shown(found), quoted(name, example));
            return STAND_IN;
        }
        double value = found.doubleValue();
        if (!bound.allows(value)) {
            faults.add(at(name), shown(found) + " must be " + bound.words(), quoted(name, example));
            return STAND_IN;
        }
        return value;
    }

    private String at(String name) {
        return pointer + "/" + name.replace("~", "~0").replace("/", "~1");
    }

    private static String quoted(String name, String example) {
        return "\"" + name + "\": " + example;
    }

    private static String shown(JsonNode node) {
        String text = node.toString();
        return text.length() <= 40 ? text : text.substring(0, 37) + "…";
    }
}
