package hornwright.desk.json;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Builds a JSON object field by field in the order written. What has no value is null, never NaN. */
public final class Out {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private final ObjectNode node = JSON.objectNode();

    public static Out object() {
        return new Out();
    }

    public Out put(String name, double value) {
        if (Double.isFinite(value)) {
            node.put(name, value == 0 ? 0.0 : value);
        } else {
            node.putNull(name);
        }
        return this;
    }

    public Out put(String name, @Nullable Double value) {
        return value == null ? putNull(name) : put(name, value.doubleValue());
    }

    public Out put(String name, long value) {
        node.put(name, value);
        return this;
    }

    public Out put(String name, int value) {
        return put(name, (long) value);
    }

    public Out put(String name, boolean value) {
        node.put(name, value);
        return this;
    }

    public Out put(String name, @Nullable String value) {
        node.put(name, value);
        return this;
    }

    public Out put(String name, @Nullable Out value) {
        if (value == null) {
            node.putNull(name);
        } else {
            node.set(name, value.node);
        }
        return this;
    }

    public Out putNull(String name) {
        node.putNull(name);
        return this;
    }

    public Out put(String name, List<Out> values) {
        ArrayNode array = node.putArray(name);
        values.forEach(value -> array.add(value.node));
        return this;
    }

    public Out putTexts(String name, List<String> values) {
        ArrayNode array = node.putArray(name);
        values.forEach(array::add);
        return this;
    }

    public Out put(String name, double[] values) {
        ArrayNode array = node.putArray(name);
        for (double value : values) {
            if (Double.isFinite(value)) {
                array.add(value == 0 ? 0.0 : value);
            } else {
                array.addNull();
            }
        }
        return this;
    }

    public ObjectNode node() {
        return node;
    }

    /** One compact line. */
    @Override
    public String toString() {
        return node.toString();
    }
}
