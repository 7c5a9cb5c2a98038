package hornwright.bench.horn;

/**
 * The shape a piece of contact material is given: a recess takes a disc, a flat tail a strip, a cylinder a plug.
 */
public enum Form implements Word {
    STRIP("strip"),
    DISC("disc"),
    SLEEVE("sleeve"),
    PLUG("plug"),
    WEDGE("wedge");

    private final String word;

    Form(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
