package hornwright.bench.survey;

import hornwright.bench.horn.Word;

/** What is wrong with the metal at a spot that is no place of the keywork. */
public enum PinSort implements Word {
    DENT("dent"),
    CRACK("crack"),
    CORROSION("corrosion"),
    OLD_SOLDER("old solder"),
    LIFTED_RING("lifted ring"),
    MISSING_STONE("missing stone");

    private final String word;

    PinSort(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
