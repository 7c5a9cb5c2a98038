package hornwright.desk.house;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A schema of docs/schema, as anybody outside would use it. */
public final class PublishedSchema {
    private final JsonNode tree;
    private final Schema schema;

    private PublishedSchema(String text) {
        this.tree = JsonMapper.builder().build().readTree(text);
        this.schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(text, InputFormat.JSON);
    }

    public static PublishedSchema of(String name) {
        return new PublishedSchema(
                Checkout.text(Checkout.root().resolve("docs/schema").resolve(name + ".schema.json")));
    }

    /** What the schema says against a text; empty when it is valid. */
    public List<String> against(String json) {
        return schema.validate(json, InputFormat.JSON).stream()
                .map(Error::toString)
                .toList();
    }

    /** The words an enumeration of the schema allows. */
    public List<String> words(String definition) {
        return tree.get("$defs")
                .get(definition)
                .get("enum")
                .valueStream()
                .map(JsonNode::asString)
                .toList();
    }

    public JsonNode tree() {
        return tree;
    }
}
