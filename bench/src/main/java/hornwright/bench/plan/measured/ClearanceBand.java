package hornwright.bench.plan.measured;

import hornwright.bench.horn.Clearance;
import hornwright.bench.horn.HornPart;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.LowTable;
import hornwright.bench.horn.OctaveState;
import hornwright.bench.horn.TableClearance;
import hornwright.bench.rules.ShopRules;
import java.util.List;
import java.util.Optional;

/**
 * What a contact of the octave mechanism or the low table should have in one state, millimetres; from 0 when it must
 * touch. Bench judgement, by rules of the shop.
 *
 * @param touches whether the contact does its work in this state
 */
public record ClearanceBand(double fromMm, double toMm, boolean touches) {
    /** Points of a clearance at the low table. */
    public static final String AT_REST = "at rest";

    public static final String DOWN = "key down";

    /** A reading in hundredths is no exact hundredth in binary. */
    private static final double ROUNDING = 1e-9;

    /** Of a contact in the state a reading names; empty when the horn has no such contact or state. */
    public static Optional<ClearanceBand> of(Keywork keywork, ShopRules rules, String link, String state) {
        for (OctaveState octave : keywork.octaveStates()) {
            for (Clearance clearance : octave.clearances()) {
                if (octave.name().equals(state) && clearance.link().equals(link)) {
                    return Optional.of(octave(keywork, rules, clearance));
                }
            }
        }
        return table(keywork.lowTable(), rules, link, state);
    }

    public static ClearanceBand octave(Keywork keywork, ShopRules rules, Clearance clearance) {
        if (clearance.mm() <= 0) {
            return touching(rules);
        }
        return opensTheNeckVent(keywork, clearance.link())
                ? free(rules, "octave.ring-least_mm", "octave.ring-most_mm")
                : free(rules, "octave.free-least_mm", "octave.free-most_mm");
    }

    /** Whether the contact works on a vent on the neck. */
    public static boolean opensTheNeckVent(Keywork keywork, String link) {
        return keywork.cupOf(keywork.keys().get(keywork.links().get(link).follower()))
                .filter(cup -> keywork.tube().partAt(keywork.holeOf(cup).at().atMm()) == HornPart.NECK)
                .isPresent();
    }

    public boolean holds(double mm) {
        return mm >= fromMm - ROUNDING && mm <= toMm + ROUNDING;
    }

    /** How far a gap lies outside; 0 inside. */
    public double outside(double mm) {
        return Math.max(0, Math.max(fromMm - mm, mm - toMm));
    }

    private static Optional<ClearanceBand> table(LowTable table, ShopRules rules, String link, String state) {
        boolean rest = state.equals(AT_REST);
        if (rest && table.gSharpTabs().stream().anyMatch(tab -> tab.link().equals(link))) {
            return Optional.of(free(rules, "table.tab-least_mm", "table.tab-most_mm"));
        }
        boolean over = has(table.bFlatOverB(), link);
        if (rest) {
            return over ? Optional.of(new ClearanceBand(0, rules.value("table.over_mm"), false)) : Optional.empty();
        }
        return state.equals(DOWN) && (over || has(table.cSharpHoldDown(), link))
                ? Optional.of(touching(rules))
                : Optional.empty();
    }

    private static boolean has(List<TableClearance> contacts, String link) {
        return contacts.stream().anyMatch(one -> one.link().equals(link));
    }

    private static ClearanceBand touching(ShopRules rules) {
        return new ClearanceBand(0, rules.value("octave.touch_mm"), true);
    }

    private static ClearanceBand free(ShopRules rules, String least, String most) {
        return new ClearanceBand(rules.value(least), rules.value(most), false);
    }
}
