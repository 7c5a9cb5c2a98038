package hornwright.bench.octave;

import hornwright.bench.rules.ShopRules;

/**
 * What a contact should have in one state of the keys, millimetres; from 0 when it must touch.
 *
 * @param touches whether the contact does its work in this state
 */
record Band(double fromMm, double toMm, boolean touches) {
    static Band touching(ShopRules rules) {
        return new Band(0, rules.value("octave.touch_mm"), true);
    }

    static Band free(ShopRules rules, String least, String most) {
        return new Band(rules.value(least), rules.value(most), false);
    }

    boolean holds(double mm) {
        return mm >= fromMm - 1e-9 && mm <= toMm + 1e-9;
    }
}
