package hornwright.desk.jobfile;

import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.survey.Condition;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.GroupFinding;
import hornwright.bench.survey.Originality;
import hornwright.bench.survey.Subject;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;

/** What was found at a place, or in one stroke over a group. */
final class FindingJson {
    private FindingJson() {}

    static Finding read(Fields f, Known known) {
        String place = f.text("place", "pad.d");
        known.check(f, "place", place, Subject.PLACE);
        return new Finding(
                place,
                f.textIfAny("material", "natural cork"),
                f.numberIfAny("thickness_mm", Bound.NOT_NEGATIVE, "1.9"),
                f.textIfAny("colour", "white"),
                f.choiceOr("condition", Spoken.of(Condition.values(), Condition::word), Condition.UNKNOWN),
                f.choiceOr("originality", Spoken.of(Originality.values(), Originality::word), Originality.UNKNOWN),
                f.textIfAny("assemblyNumber", "207"),
                f.textIfAny("photo", "a photograph of the store"));
    }

    static GroupFinding group(Fields f) {
        return new GroupFinding(
                f.text("id", "g.001"),
                f.choice("group", Spoken.of(KeyGroup.values(), KeyGroup::word)).word(),
                f.choice("kind", Spoken.of(PlaceKind.values(), PlaceKind::word)).word(),
                f.text("mostly", "natural cork"),
                f.texts("also"),
                (int) f.numberOr("missing", 0, Bound.NOT_NEGATIVE, "1"),
                f.numberIfAny("thickness_mm", Bound.NOT_NEGATIVE, "1.9"),
                f.choiceOr("condition", Spoken.of(Condition.values(), Condition::word), Condition.UNKNOWN));
    }
}
