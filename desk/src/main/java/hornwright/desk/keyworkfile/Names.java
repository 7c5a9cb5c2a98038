package hornwright.desk.keyworkfile;

import hornwright.bench.horn.Position;
import hornwright.bench.horn.TradeName;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;

/** What nearly every part of a keywork has: an id, a trade name, a spot on the tube. */
final class Names {
    private Names() {}

    static String id(Fields f, String example) {
        String id = f.text("id", example);
        if (!id.matches("[a-z0-9]+([.-][a-z0-9]+)*")) {
            f.fault(
                    "id",
                    "\"" + id + "\" is not an id: small letters, digits, dots and hyphens",
                    "\"" + example + "\"");
        }
        return id;
    }

    static TradeName name(Fields f, String example) {
        return new TradeName(f.text("name", example), f.texts("aliases"));
    }

    static Position position(Fields f) {
        return new Position(f.number("at_mm", Bound.NOT_NEGATIVE, "399.1"), f.number("angle_deg", Bound.ANY, "-12.0"));
    }

    static Out put(Out out, TradeName name) {
        out.put("name", name.plain());
        return name.aliases().isEmpty() ? out : out.putTexts("aliases", name.aliases());
    }

    static Out put(Out out, Position at) {
        return out.put("at_mm", at.atMm()).put("angle_deg", at.angleDeg());
    }
}
