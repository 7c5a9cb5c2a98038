package hornwright.bench.horn;

/**
 * Which of the two parts that meet carries the material.
 */
public enum Face implements Word {
    KEY("key"),
    BODY("body"),
    GUARD("guard"),
    DRIVER("driver"),
    FOLLOWER("follower");

    private final String word;

    Face(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
