package hornwright.bench.rules;

/**
 * One rule of the shop.
 *
 * @param id stable; the unit is part of it
 * @param value in the unit
 * @param u one standard uncertainty of the value for a horn nobody has measured; 0 for a choice
 * @param unit "mm", "N", "h", "" for a pure number
 * @param least smallest value that makes sense
 * @param most largest value that makes sense
 * @param says what it means, in one line
 * @param mark what stands behind the shipped value
 * @param asShipped whether the shop has left it as it came
 */
public record Rule(
        String id,
        double value,
        double u,
        String unit,
        double least,
        double most,
        String says,
        Mark mark,
        boolean asShipped) {
    public Rule {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(id + " must lie between " + least + " and " + most + ", got " + value);
        }
    }

    /** How the rule is shown beside its value. */
    public String label() {
        if (isMeasured()) {
            return mark.word();
        }
        return asShipped ? mark.word() + ", typical, check yours" : "set by this shop";
    }

    /** Whether a test at this shop's bench gave the value. */
    public boolean isMeasured() {
        return mark == Mark.MEASURED;
    }

    Rule measured(double newValue, double newU, String how) {
        double within = Math.clamp(newValue, least, most);
        return new Rule(id, within, newU, unit, least, most, says + "; " + how, Mark.MEASURED, false);
    }

    Rule with(double newValue) {
        return new Rule(id, newValue, u, unit, least, most, says, mark, false);
    }
}
