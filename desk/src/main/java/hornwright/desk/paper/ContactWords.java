package hornwright.desk.paper;

import hornwright.bench.plan.PlannedLink;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.regulation.Correction;
import hornwright.desk.units.Shown;
import java.util.Locale;

/** What to do at a contact: on the page, on paper and beside its drawing. */
public final class ContactWords {
    private ContactWords() {}

    /** "take", "turn the screw out"; how much follows. */
    public static String work(PlannedLink line) {
        return switch (line.work()) {
            case TAKE -> "take";
            case ADD -> "add: a new piece, or line it";
            case SCREW -> "turn the screw " + way(line);
            case RENEW -> "less than one pull and no screw: a new piece, thinner by";
            case LEAVE -> "leave";
        };
    }

    /** "take 0.08 ± 0.01", "screw out 0.20 ± 0.03 turns (0.08)"; empty where it is left. */
    public static String onPaper(PlannedLink line) {
        PlannedNumber change = line.change();
        if (change == null) {
            return "";
        }
        PlannedNumber turns = line.turns();
        double amount = Math.abs(change.value());
        return turns != null
                ? "screw %s %s turns (%s mm)"
                        .formatted(
                                way(line),
                                Shown.of(Math.abs(turns.value()), turns.u()),
                                Shown.value(amount, change.u()))
                : (change.value() < 0 ? "take " : "add ")
                        + Shown.of(amount, change.u())
                        + (line.work() == Correction.Work.ADD ? ", new piece or lining" : "")
                        + (line.work() == Correction.Work.RENEW ? ", new piece" : "");
    }

    /** What fits beside a contact in its drawing; empty where it is left. */
    public static String beside(PlannedLink line) {
        PlannedNumber change = line.change();
        if (change == null) {
            return "";
        }
        PlannedNumber turns = line.turns();
        return turns != null
                ? String.format(Locale.ROOT, "screw %s %.2f", way(line), Math.abs(turns.value()))
                : String.format(Locale.ROOT, change.value() < 0 ? "take %.2f" : "add %.2f", Math.abs(change.value()));
    }

    private static String way(PlannedLink line) {
        PlannedNumber change = line.change();
        return change != null && change.value() < 0 ? "out" : "in";
    }
}
