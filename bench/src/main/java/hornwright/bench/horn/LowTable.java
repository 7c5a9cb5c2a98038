package hornwright.bench.horn;

import java.util.List;

/**
 * The clearances that make the left little finger's table feel right: tabs on the G sharp lever, the C sharp hold-
 * down, B flat over B, and the rollers.
 */
public record LowTable(
        List<Clearance> gSharpTabs,
        List<TableClearance> cSharpHoldDown,
        List<TableClearance> bFlatOverB,
        List<String> rollers) {
    public LowTable {
        gSharpTabs = List.copyOf(gSharpTabs);
        cSharpHoldDown = List.copyOf(cSharpHoldDown);
        bFlatOverB = List.copyOf(bFlatOverB);
        rollers = List.copyOf(rollers);
    }
}
