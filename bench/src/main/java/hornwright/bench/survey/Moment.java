package hornwright.bench.survey;

import hornwright.bench.horn.Word;

/** When a photograph was taken: what is compared is how the horn came and how it leaves. */
public enum Moment implements Word {
    BEFORE("as it came"),
    DURING("in work"),
    AFTER("as it leaves");

    private final String word;

    Moment(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
