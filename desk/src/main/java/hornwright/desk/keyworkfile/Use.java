package hornwright.desk.keyworkfile;

import hornwright.bench.horn.Clearance;
import hornwright.bench.horn.ClosingSet;
import hornwright.bench.horn.Hold;
import hornwright.bench.horn.LinkedSet;
import hornwright.bench.horn.LowTable;
import hornwright.bench.horn.OctaveState;
import hornwright.bench.horn.TableClearance;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import java.util.List;

/** How the keys are meant to act together. */
record Use(
        List<ClosingSet> sets,
        List<Hold> holds,
        List<LinkedSet> linkedSets,
        List<OctaveState> octaveStates,
        LowTable lowTable) {
    static Use read(Fields file) {
        return new Use(
                file.list("sets", f -> new ClosingSet(f.text("press", "d"), f.texts("closes"))),
                file.list(
                        "holds",
                        f -> new Hold(
                                f.text("press", "d"), f.texts("holds"), f.textIfAny("whileReleased", "g-sharp-lever"))),
                file.list("linkedSets", f -> new LinkedSet(Names.name(f, "right hand"), f.texts("cups"))),
                file.list("octaveStates", Use::octaveState),
                file.object("lowTable", Use::lowTable));
    }

    private static OctaveState octaveState(Fields f) {
        return new OctaveState(
                f.text("name", "thumb up, G up"),
                f.texts("pressed"),
                f.textIfAny("openVent", "neck-octave"),
                f.list("clearances", Use::clearance));
    }

    private static LowTable lowTable(Fields f) {
        return new LowTable(
                f.list("gSharpTabs", Use::clearance),
                f.list("cSharpHoldDown", Use::tableClearance),
                f.list("bFlatOverB", Use::tableClearance),
                f.texts("rollers"));
    }

    private static Clearance clearance(Fields f) {
        return new Clearance(
                f.text("link", "link.table-b-to-g-sharp-lever"), f.number("gap_mm", Bound.NOT_NEGATIVE, "0.1"));
    }

    private static TableClearance tableClearance(Fields f) {
        return new TableClearance(
                f.text("link", "link.table-b-to-low-c-sharp"),
                f.number("rest_mm", Bound.NOT_NEGATIVE, "2.4"),
                f.number("down_mm", Bound.NOT_NEGATIVE, "0"));
    }
}
