package hornwright.desk.reckon;

import hornwright.desk.json.BadInput;
import hornwright.desk.json.Fault;
import hornwright.desk.json.Faults;
import hornwright.desk.json.Fields;
import hornwright.desk.json.StrictJson;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** An engine asked once, with single quotes for double ones. */
final class Asked {
    private Asked() {}

    static Answer answer(Engine engine, String json) {
        Faults faults = new Faults();
        Engine.Reckoning reckoning = Fields.of(StrictJson.object(json.replace('\'', '"')), "", faults)
                .read(engine::read);
        faults.refuseIfAny();
        return reckoning.compute();
    }

    static JsonNode out(Engine engine, String json) {
        return answer(engine, json).out().node();
    }

    static double number(Engine engine, String json, String pointer) {
        return out(engine, json).at(pointer).doubleValue();
    }

    /** Pointers of everything found wrong, in order; empty if nothing was. */
    static List<String> faults(Engine engine, String json) {
        try {
            answer(engine, json);
            return List.of();
        } catch (BadInput bad) {
            return bad.faults().stream().map(Fault::pointer).toList();
        }
    }
}
