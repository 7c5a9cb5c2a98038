package hornwright.desk.json;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Turns text into JSON trees, refusing repeated keys, NaN, comments and anything after the last value. */
public final class StrictJson {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
            .disable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private StrictJson() {}

    /** The objects in {@code text}, separated by white space; at least one, else {@link BadInput}. */
    public static List<JsonNode> objects(String text) {
        List<JsonNode> all = new ArrayList<>();
        try (JsonParser parser = MAPPER.createParser(text)) {
            readAll(parser, all);
        }
        if (all.isEmpty()) {
            throw new BadInput("", "the input is empty", "one JSON object, { … }");
        }
        return all;
    }

    /** The one object in {@code text}. */
    public static JsonNode object(String text) {
        List<JsonNode> all = objects(text);
        if (all.size() > 1) {
            throw new BadInput("", "there are " + all.size() + " objects, one is expected", "one JSON object, { … }");
        }
        return all.getFirst();
    }

    private static String spoken(JsonToken token) {
        return switch (token) {
            case START_ARRAY, END_ARRAY -> "a list";
            case VALUE_STRING -> "a text";
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> "a number";
            case VALUE_TRUE, VALUE_FALSE -> "a yes or no";
            case VALUE_NULL -> "null";
            default -> "something else";
        };
    }

    private static void readAll(JsonParser parser, List<JsonNode> all) {
        try {
            while (parser.nextToken() != null) {
                if (parser.currentToken() != JsonToken.START_OBJECT) {
                    throw new BadInput(
                            "",
                            "at the top stands " + spoken(parser.currentToken()) + ", an object is expected",
                            "{ … }");
                }
                all.add(MAPPER.readTree(parser));
            }
        } catch (JacksonException broken) {
            throw refusal(broken, parser, all.size());
        }
    }

    private static BadInput refusal(JacksonException broken, JsonParser parser, int before) {
        var where = broken.getLocation();
        String place = where == null ? "" : " (line " + where.getLineNr() + ", column " + where.getColumnNr() + ")";
        String prefix = before == 0 ? "" : "#" + (before + 1);
        String message = String.valueOf(broken.getOriginalMessage());
        if (message.startsWith("Duplicate")) {
            return new BadInput(
                    prefix + pointerOf(parser), "this key stands twice in one object" + place, "each key once");
        }
        return new BadInput(
                prefix + pointerOf(parser),
                "this is not JSON" + place + ": " + firstLine(message),
                "{ \"name\": 1.5 }");
    }

    private static String pointerOf(JsonParser parser) {
        return parser.streamReadContext() == null
                ? ""
                : parser.streamReadContext().pathAsPointer().toString();
    }

    private static String firstLine(String message) {
        int end = message.indexOf('\n');
        return end < 0 ? message : message.substring(0, end);
    }
}
