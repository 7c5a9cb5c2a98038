package hornwright.bench.archive;

/**
 * How many of the horns known in an era were looked at in this place, and how many of those differ.
 *
 * @param known witnesses of the era
 * @param looked those with at least one look at the place
 * @param exceptions those that had something else
 */
public record Examined(int known, int looked, int exceptions) {
    private static final double DOUBT = 0.05;

    /** Without an exception, the share of exceptions among all horns lies below this with 95 % confidence: 1 − 0.05^(1/n). */
    public double exceptionShareAtMost() {
        return exceptions > 0 || looked == 0 ? 1 : 1 - Math.pow(DOUBT, 1.0 / looked);
    }

    /** "7 of 9 examined, no exception". */
    public String inWords() {
        String differing =
                exceptions == 0 ? "no exception" : exceptions == 1 ? "1 exception" : exceptions + " exceptions";
        return looked + " of " + known + " examined" + (looked == 0 ? "" : ", " + differing);
    }
}
