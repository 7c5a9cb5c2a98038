package hornwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.desk.json.StrictJson;
import hornwright.desk.reckon.Engine;
import hornwright.desk.reckon.Engines;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Every value of every example put wrong in every way: answered or refused with a sentence, never by a stumble. */
final class WrongValuesTest {
    private static final List<String> WRONG = List.of("null", "\"x\"", "-1", "0", "0.5", "1e300", "1e-300", "[]", "{}");

    /** The one that reads sound has no JSON to put wrong; air is tried apart, it takes long. */
    static Stream<String> jsonEngines() {
        return Engines.all().stream()
                .map(Engine::name)
                .filter(name -> !List.of("pitch", "air").contains(name));
    }

    @ParameterizedTest
    @MethodSource("jsonEngines")
    void a_wrong_value_anywhere_is_answered_or_refused_with_a_sentence(String engine) {
        JsonNode example =
                StrictJson.object(quick(Shell.run("", "example", engine).out()));
        for (Place place : places(example, "")) {
            for (String wrong : WRONG) {
                place.put(StrictJson.object("{\"v\":" + wrong + "}").get("v"));
                assertSound(engine, example.toString(), place.pointer() + " = " + wrong);
            }
            place.restore();
        }
    }

    @ParameterizedTest
    @MethodSource("jsonEngines")
    void a_field_nobody_knows_is_refused_wherever_it_stands(String engine) {
        JsonNode example =
                StrictJson.object(quick(Shell.run("", "example", engine).out()));
        for (ObjectNode object : objects(example)) {
            object.put("nonsense", 1);
            Shell.Result result = Shell.run(example.toString(), "reckon", engine);
            assertThat(result.code()).isEqualTo(2);
            assertThat(result.err()).contains("/nonsense: unknown field");
            object.remove("nonsense");
        }
    }

    private static String quick(String example) {
        return example.replace("\"draws\": 100000", "\"draws\": 100").replace("\"draws\": 10000", "\"draws\": 20");
    }

    private static void assertSound(String engine, String input, String what) {
        Shell.Result result = Shell.run(input, "reckon", engine);
        assertThat(result.code()).as(what + "\n" + result.err()).isIn(0, 1, 2);
        assertThat(result.err()).as(what).doesNotContain("Exception").doesNotContain("at hornwright");
        if (result.code() == 2) {
            assertThat(result.out()).as(what).isEmpty();
            assertThat(result.err().lines()).as(what).isNotEmpty().allMatch(line -> line.contains("; right would be "));
        } else {
            assertThat(result.out()).as(what).startsWith("{").endsWith("}\n").doesNotContain("NaN", "Infinity");
            assertThat(result.err().isBlank()).as(what + result.err()).isEqualTo(result.code() == 0);
        }
    }

    /** One value in a tree that can be put wrong and right again. */
    private record Place(String pointer, JsonNode parent, String name, int index, JsonNode right) {
        void put(JsonNode value) {
            switch (parent) {
                case ObjectNode object -> object.set(name, value);
                case ArrayNode array -> array.set(index, value);
                default -> throw new IllegalStateException("a value stands in an object or a list");
            }
        }

        void restore() {
            put(right);
        }
    }

    private static List<Place> places(JsonNode node, String pointer) {
        List<Place> all = new ArrayList<>();
        switch (node) {
            case ObjectNode object -> {
                for (Map.Entry<String, JsonNode> field : object.properties()) {
                    String at = pointer + "/" + field.getKey();
                    all.add(new Place(at, object, field.getKey(), 0, field.getValue()));
                    all.addAll(places(field.getValue(), at));
                }
            }
            case ArrayNode array -> {
                for (int i = 0; i < array.size(); i++) {
                    all.add(new Place(pointer + "/" + i, array, "", i, array.get(i)));
                    all.addAll(places(array.get(i), pointer + "/" + i));
                }
            }
            default -> {
                // a leaf holds no further place
            }
        }
        return all;
    }

    private static List<ObjectNode> objects(JsonNode node) {
        List<ObjectNode> all = new ArrayList<>();
        if (node instanceof ObjectNode object) {
            all.add(object);
        }
        for (JsonNode child : node) {
            all.addAll(objects(child));
        }
        return all;
    }
}
