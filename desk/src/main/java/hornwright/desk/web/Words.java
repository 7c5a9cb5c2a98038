package hornwright.desk.web;

import hornwright.bench.horn.TradeName;

/** Edits in words, with the signs of note names and a capital. */
final class Words {
    private Words() {}

    static String of(String words) {
        return hornwright.desk.web.view.OnBench.capital(TradeName.withSigns(words));
    }
}
