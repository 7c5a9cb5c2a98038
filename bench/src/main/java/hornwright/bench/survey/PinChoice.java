package hornwright.bench.survey;

import hornwright.bench.horn.Word;

/** What is done about a pin. */
public enum PinChoice implements Word {
    LOOK("look and decide"),
    LEAVE("leave"),
    WATCH("leave and watch"),
    MEND("mend");

    private final String word;

    PinChoice(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
