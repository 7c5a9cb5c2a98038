package hornwright.desk.jobfile;

import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.PadClass;
import hornwright.bench.survey.Subject;
import hornwright.bench.survey.Treatment;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** What a person settled: a use, a treatment, a height, a pad thickness, a class of pads or what is done at a contact. */
final class DecisionJson {
    private DecisionJson() {}

    /** A decision and when it was made; without that it is older than all work. */
    record Dated(Decision decision, @Nullable Instant when) {}

    static Dated read(Fields f, Known known) {
        Decision decision = decision(f, known);
        return new Dated(decision, ReadingJson.instant(f));
    }

    private static Decision decision(Fields f, Known known) {
        String why = f.text("why", "the owner wants it so");
        return switch (f.oneOf("use", "treatment", "front_mm", "thickness_mm", "change_mm", "padClass")) {
            case "treatment" -> treat(f, known, why);
            case "front_mm" -> new Decision.Height(cup(f, known), f.number("front_mm", Bound.POSITIVE, "8.0"), why);
            case "thickness_mm" ->
                new Decision.PadThickness(cup(f, known), f.number("thickness_mm", Bound.POSITIVE, "4.3"), why);
            case "change_mm" -> new Decision.Contact(link(f, known), f.number("change_mm", Bound.ANY, "-0.08"), why);
            case "padClass" ->
                new Decision.PadSoftness(
                        f.has("cup") ? cup(f, known) : null,
                        f.choice("padClass", Spoken.of(PadClass.values(), PadClass::word)),
                        why);
            default -> new Decision.Use(f.choice("use", Spoken.of(AgreedUse.values(), AgreedUse::word)), why);
        };
    }

    private static Decision treat(Fields f, Known known, String why) {
        String place = f.text("place", "pad.d");
        known.check(f, "place", place, Subject.PLACE);
        return new Decision.Treat(
                place,
                f.choice("treatment", Spoken.of(Treatment.values(), Treatment::word)),
                f.textIfAny("material", "natural cork"),
                why);
    }

    private static String link(Fields f, Known known) {
        String link = f.text("link", "link.d-to-f-sharp");
        known.check(f, "link", link, Subject.LINK);
        return link;
    }

    private static String cup(Fields f, Known known) {
        String cup = f.text("cup", "cup.d");
        known.check(f, "cup", cup, Subject.CUP);
        return cup;
    }
}
