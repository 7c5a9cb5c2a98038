package hornwright.bench.horn;

/**
 * What stands in the middle of a pad.
 */
public enum PadCentreKind implements Word {
    RESONATOR("resonator"),
    RIVET("rivet"),
    STITCHED("stitched"),
    BARE("bare");

    private final String word;

    PadCentreKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
