package hornwright.bench.stock;

import hornwright.bench.horn.Word;

/** The kinds of goods a shop keeps for this work. */
public enum StockKind implements Word {
    PAD("pad"),
    CORK_SHEET("cork sheet"),
    FELT_SHEET("felt sheet"),
    FELT_DISC("felt disc"),
    RESONATOR("resonator"),
    RIVET("rivet"),
    NEEDLE_SPRING("needle spring"),
    FLAT_SPRING("flat spring"),
    TUBING("tubing"),
    NECK_CORK("neck cork"),
    ADHESIVE("adhesive");

    private final String word;

    StockKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
