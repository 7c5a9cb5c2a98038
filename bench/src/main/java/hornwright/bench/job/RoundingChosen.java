package hornwright.bench.job;

import hornwright.bench.rules.Rounding;

/** Which way pad diameters go to the stocked step. */
@Kind(word = "rounding-chosen")
public record RoundingChosen(Rounding rounding) implements RulesEdit {
    @Override
    public Fields fields() {
        return Fields.of("rounding");
    }

    @Override
    public String inWords() {
        return "rounding: " + rounding.word();
    }
}
