package hornwright.engines.uncertainty;

/** A model that cannot be read: what is wrong, at which character (from 1), and what would be right. */
public final class ModelFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String example;

    ModelFault(int at, String what, String example) {
        super("at character " + (at + 1) + ": " + what);
        this.example = example;
    }

    public String example() {
        return example;
    }
}
