package hornwright.bench.plan;

/** Where on the hole a height is stated. */
public enum HeightPoint {
    /** The edge of the hole away from the hinge, where a wedge gauge goes. */
    FRONT("front"),
    CENTRE("centre");

    private final String word;

    HeightPoint(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
