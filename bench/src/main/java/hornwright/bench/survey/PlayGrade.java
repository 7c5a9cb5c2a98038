package hornwright.bench.survey;

import hornwright.bench.horn.Word;

/** Play at a hinge as fingers feel it, with the clearance each grade usually means (common practice). */
public enum PlayGrade implements Word {
    NONE("none", 0, 0.03),
    JUST_FELT("just felt", 0.03, 0.05),
    CLEAR("clear", 0.05, 0.08),
    LOOSE("loose", 0.08, 0.15);

    private final String word;
    private final double fromMm;
    private final double toMm;

    PlayGrade(String word, double fromMm, double toMm) {
        this.word = word;
        this.fromMm = fromMm;
        this.toMm = toMm;
    }

    @Override
    public String word() {
        return word;
    }

    public double fromMm() {
        return fromMm;
    }

    public double toMm() {
        return toMm;
    }
}
