package hornwright.bench.horn;

/**
 * One thumb lever that chooses its vent by the G key, or two levers, one for each vent.
 */
public enum OctaveLevers implements Word {
    ONE("one"),
    TWO("two");

    private final String word;

    OctaveLevers(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
