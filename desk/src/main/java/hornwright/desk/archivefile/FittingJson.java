package hornwright.desk.archivefile;

import hornwright.bench.archive.Evidence;
import hornwright.bench.archive.FitKind;
import hornwright.bench.archive.Fitting;
import hornwright.bench.horn.Voice;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;
import hornwright.desk.keyworkfile.Words;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What fits where, in JSON. */
final class FittingJson {
    private FittingJson() {}

    static Fitting read(Fields f) {
        FitKind kind = f.choice("what", Words.of(FitKind.class));
        Voice voice = f.choice("voice", Words.of(Voice.class));
        List<String> places = f.texts("places");
        if (places.isEmpty()) {
            f.fault("places", "what fits nowhere is no claim", "\"places\": [\"spring.f\"]");
        }
        String part = f.text("part", "needle spring, blued steel");
        @Nullable Double size = f.numberIfAny("size_mm", Bound.POSITIVE, "1.07");
        Evidence evidence = f.object("evidence", StatementJson::evidence);
        return new Fitting(kind, voice, places.isEmpty() ? List.of("?") : places, part, size, evidence);
    }

    static Out write(Fitting fitting) {
        Out out = Out.object()
                .put("what", fitting.kind().word())
                .put("voice", fitting.voice().word())
                .putTexts("places", fitting.places())
                .put("part", fitting.part());
        if (fitting.sizeMm() != null) {
            out.put("size_mm", fitting.sizeMm());
        }
        return out.put("evidence", StatementJson.write(fitting.evidence()));
    }
}
