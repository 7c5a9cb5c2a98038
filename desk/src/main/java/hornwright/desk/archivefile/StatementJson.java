package hornwright.desk.archivefile;

import hornwright.bench.archive.Bearing;
import hornwright.bench.archive.Edtf;
import hornwright.bench.archive.Evidence;
import hornwright.bench.archive.Hand;
import hornwright.bench.archive.Integrity;
import hornwright.bench.archive.Interest;
import hornwright.bench.archive.Means;
import hornwright.bench.archive.Origin;
import hornwright.bench.archive.Resolution;
import hornwright.bench.archive.SerialRange;
import hornwright.bench.archive.Stance;
import hornwright.bench.archive.Statement;
import hornwright.bench.horn.Voice;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;
import hornwright.desk.keyworkfile.Words;

/** Papers, books and people that speak of many horns, and why an item was set aside, in JSON. */
final class StatementJson {
    private StatementJson() {}

    static Statement read(Fields f) {
        return new Statement(
                f.choice("voice", Words.of(Voice.class)),
                f.text("place", "foot.d"),
                f.text("material", "natural cork"),
                f.object("evidence", StatementJson::evidence));
    }

    static Evidence evidence(Fields f) {
        Means means = f.object("means", MeansJson::read);
        return new Evidence(
                f.text("id", "paper-3"),
                means,
                f.choiceOr("hand", Words.of(Hand.class), Hand.UNKNOWN),
                f.choiceOr("bearing", Words.of(Bearing.class), Bearing.DIRECT),
                f.choice("stance", Words.of(Stance.class)),
                new Origin(f.text("origin", "workshop papers"), means.kind()),
                f.choiceOr("interest", Words.of(Interest.class), Interest.NEUTRAL),
                f.choiceOr("integrity", Words.of(Integrity.class), Integrity.UNKNOWN),
                f.object("serials", StatementJson::serials),
                f.textIfAny("citation", "workshop papers, sheet 3"),
                f.textIfAny("file", "sha-256 of the scan"),
                f.objectIfAny("search", SearchJson::log));
    }

    private static SerialRange serials(Fields f) {
        int from = f.whole("from", Bound.COUNT, "38000");
        int to = f.wholeOr("to", from, Bound.COUNT, "45000");
        if (to < from) {
            f.fault("to", "serials run from the lower to the higher", "\"to\": " + from);
            return SerialRange.one(from);
        }
        return new SerialRange(from, to);
    }

    static Resolution resolution(Fields f) {
        String evidence = f.text("evidence", "w-41630.feet.foot.d");
        String reason = f.text("reason", "a later felt lies over the first cork");
        String who = f.text("who", "the bench");
        Edtf when = f.has("when") ? WitnessJson.date(f, "when") : null;
        if (!f.has("when")) {
            f.fault("when", "missing", "\"when\": \"2026-01\"");
        }
        return new Resolution(evidence, reason, who, when == null ? Edtf.parse("2026") : when);
    }

    static Out write(Evidence e) {
        Out evidence = Out.object()
                .put("id", e.id())
                .put("means", MeansJson.write(e.means()))
                .put("hand", e.hand().word())
                .put("bearing", e.bearing().word())
                .put("stance", e.stance().word())
                .put("origin", e.origin().id())
                .put("interest", e.interest().word())
                .put("integrity", e.integrity().word())
                .put(
                        "serials",
                        Out.object()
                                .put("from", e.serials().from())
                                .put("to", e.serials().to()));
        ObservationJson.ifAny(evidence, "citation", e.citation());
        ObservationJson.ifAny(evidence, "file", e.file());
        if (e.search() != null) {
            evidence.put("search", SearchJson.write(e.search()));
        }
        return evidence;
    }

    static Out write(Statement statement) {
        return Out.object()
                .put("voice", statement.voice().word())
                .put("place", statement.place())
                .put("material", statement.material())
                .put("evidence", write(statement.evidence()));
    }

    static Out write(Resolution resolution) {
        return Out.object()
                .put("evidence", resolution.evidence())
                .put("reason", resolution.reason())
                .put("who", resolution.who())
                .put("when", resolution.when().text());
    }
}
