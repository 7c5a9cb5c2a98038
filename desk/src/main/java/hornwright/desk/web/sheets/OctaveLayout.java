package hornwright.desk.web.sheets;

import hornwright.bench.horn.Clearance;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.OctaveState;
import hornwright.bench.horn.TableClearance;
import hornwright.bench.octave.OctaveSheet;
import hornwright.bench.survey.ReadingKind;
import hornwright.desk.web.sheets.SheetLayout.Field;
import hornwright.desk.web.sheets.SheetLayout.Line;
import hornwright.desk.web.sheets.SheetLayout.Section;
import hornwright.desk.web.view.OnBench;
import java.util.ArrayList;
import java.util.List;

/** The octave mechanism state by state, then the low table, then lost motion under the fingers. */
final class OctaveLayout {
    private final Keywork keywork;

    OctaveLayout(OnBench bench) {
        this.keywork = bench.keywork();
    }

    List<Section> sections() {
        List<Section> sections = new ArrayList<>();
        for (OctaveState state : keywork.octaveStates()) {
            sections.add(new Section(
                    OnBench.capital(state.name()),
                    state.openVent() == null ? "Both vents shut." : "The " + vent(state.openVent()) + " is open.",
                    state.clearances().stream()
                            .map(clearance -> line(clearance.link(), state.name()))
                            .toList()));
        }
        sections.add(new Section("Neck turned", "In every state, the neck 20° to either side.", List.of(turned())));
        sections.add(new Section("Low table", "", table()));
        sections.add(new Section(
                "Lost motion at the fingertip",
                "How far the touch moves before anything else does.",
                OctaveSheet.touches(keywork).stream().map(OctaveLayout::lost).toList()));
        return sections;
    }

    private List<Line> table() {
        List<Line> lines = new ArrayList<>();
        for (Clearance tab : keywork.lowTable().gSharpTabs()) {
            lines.add(line(tab.link(), OctaveSheet.AT_REST));
        }
        for (TableClearance hold : keywork.lowTable().cSharpHoldDown()) {
            lines.add(line(hold.link(), OctaveSheet.DOWN));
        }
        for (TableClearance over : keywork.lowTable().bFlatOverB()) {
            lines.add(line(over.link(), OctaveSheet.AT_REST));
            lines.add(line(over.link(), OctaveSheet.DOWN));
        }
        return lines;
    }

    private Line line(String link, String point) {
        String name = OnBench.capital(OctaveSheet.name(keywork, keywork.links().get(link)));
        boolean table = point.equals(OctaveSheet.AT_REST) || point.equals(OctaveSheet.DOWN);
        return new Line(
                OctaveSheet.id(link, point),
                name,
                "",
                List.of(Field.typed(ReadingKind.CLEARANCE, link, point, table ? OnBench.capital(point) : "Clearance")),
                List.of());
    }

    private static Line turned() {
        return new Line(
                OctaveSheet.TURNED_LINE,
                "Ring on the neck",
                "",
                List.of(Field.chosen(
                        ReadingKind.NECK_CHECK,
                        "neck",
                        OctaveSheet.TURNED,
                        "The ring",
                        "free",
                        "rubs",
                        "opens the vent")),
                List.of());
    }

    private static Line lost(Key key) {
        return new Line(
                key.id(),
                OnBench.capital(key.name().display()),
                "",
                List.of(Field.typed(ReadingKind.LOST_MOTION, key.id(), OctaveSheet.FINGERTIP, "At the fingertip")),
                List.of());
    }

    private String vent(String hole) {
        return keywork.holes().get(hole).name().display();
    }
}
