package hornwright.desk.keyworkfile;

import hornwright.bench.horn.Fingering;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;

/** A fingering in JSON. */
final class FingeringJson {
    private FingeringJson() {}

    static Fingering read(Fields f) {
        int register = f.whole("register", Bound.COUNT, "1");
        return new Fingering(
                Names.id(f, "note.b-flat-3"),
                f.text("written", "Bb3"),
                f.textOr("label", "standard", "standard"),
                register,
                f.wholeOr("peak", register, Bound.COUNT, "1"),
                f.flagOr("standard", true),
                f.texts("open"));
    }

    static Out write(Fingering fingering) {
        return Out.object()
                .put("id", fingering.id())
                .put("written", fingering.written())
                .put("label", fingering.label())
                .put("register", fingering.register())
                .put("peak", fingering.peak())
                .put("standard", fingering.standard())
                .putTexts("open", fingering.open());
    }
}
