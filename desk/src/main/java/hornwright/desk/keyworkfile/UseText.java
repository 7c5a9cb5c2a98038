package hornwright.desk.keyworkfile;

import hornwright.bench.horn.Clearance;
import hornwright.bench.horn.ClosingSet;
import hornwright.bench.horn.Hold;
import hornwright.bench.horn.LinkedSet;
import hornwright.bench.horn.LowTable;
import hornwright.bench.horn.OctaveState;
import hornwright.bench.horn.TableClearance;
import hornwright.desk.json.Out;
import java.util.List;

/** How the keys act together, written back. */
final class UseText {
    private UseText() {}

    static Out write(ClosingSet set) {
        return Out.object().put("press", set.press()).putTexts("closes", set.closes());
    }

    static Out write(Hold hold) {
        Out out = Out.object().put("press", hold.press()).putTexts("holds", hold.holds());
        return hold.whileReleased() == null ? out : out.put("whileReleased", hold.whileReleased());
    }

    static Out write(LinkedSet set) {
        return Names.put(Out.object(), set.name()).putTexts("cups", set.cups());
    }

    static Out write(OctaveState state) {
        Out out = Out.object().put("name", state.name()).putTexts("pressed", state.pressed());
        if (state.openVent() != null) {
            out.put("openVent", state.openVent());
        }
        return out.put("clearances", clearances(state.clearances()));
    }

    static Out write(LowTable table) {
        return Out.object()
                .put("gSharpTabs", clearances(table.gSharpTabs()))
                .put("cSharpHoldDown", tableClearances(table.cSharpHoldDown()))
                .put("bFlatOverB", tableClearances(table.bFlatOverB()))
                .putTexts("rollers", table.rollers());
    }

    private static List<Out> clearances(List<Clearance> all) {
        return all.stream()
                .map(c -> Out.object().put("link", c.link()).put("gap_mm", c.mm()))
                .toList();
    }

    private static List<Out> tableClearances(List<TableClearance> all) {
        return all.stream()
                .map(c -> Out.object()
                        .put("link", c.link())
                        .put("rest_mm", c.atRestMm())
                        .put("down_mm", c.downMm()))
                .toList();
    }
}
