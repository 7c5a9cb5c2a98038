package hornwright.bench.rules;

import hornwright.bench.horn.Word;

/** Which way a pad diameter goes to the stocked step. */
public enum Rounding implements Word {
    NEAREST("nearest"),
    UP("up"),
    DOWN("down");

    private final String word;

    Rounding(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    /** The multiple of step this rounding goes to; a nearest tie goes down, since a tight pad domes. */
    public double to(double value, double step) {
        double steps = value / step;
        double whole = switch (this) {
            case NEAREST -> Math.ceil(steps - 0.5 - 1e-9);
            case UP -> Math.ceil(steps - 1e-9);
            case DOWN -> Math.floor(steps + 1e-9);
        };
        return whole * step;
    }
}
