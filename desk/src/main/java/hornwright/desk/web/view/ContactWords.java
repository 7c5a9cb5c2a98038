package hornwright.desk.web.view;

import hornwright.bench.plan.PlannedLink;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.regulation.Correction;
import hornwright.desk.units.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What to do at a contact: on the page, on paper and beside its drawing. */
final class ContactWords {
    private ContactWords() {}

    /** "take", "turn the screw out"; how much follows. */
    static String work(PlannedLink line) {
        return switch (line.work()) {
            case TAKE -> "take";
            case ADD -> "add: a new piece, or line it";
            case SCREW -> "turn the screw " + way(line);
            case RENEW -> "less than one pull and no screw: a new piece, thinner by";
            case LEAVE -> "leave";
        };
    }

    /** Turns of the screw or pulls of the strip with how much they come to, none of them with a sign. */
    static List<Figure> figures(String horn, PlannedLink line) {
        List<Figure> figures = new ArrayList<>();
        PlannedNumber turns = line.turns();
        if (turns != null) {
            figures.add(Figure.of(horn, "turns of the screw", unsigned(turns)));
        }
        PlannedNumber change = line.change();
        if (change != null) {
            figures.add(Figure.of(horn, change.value() < 0 ? "take" : "add", unsigned(change)));
        }
        if (line.pulls() != null) {
            figures.add(Figure.of(horn, "pulls", line.pulls()));
        }
        return figures;
    }

    /** "take 0.08", "screw out 0.20 turns". */
    static String onPaper(PlannedLink line, PlannedNumber change) {
        PlannedNumber turns = line.turns();
        String amount = Shown.value(Math.abs(change.value()), change.u());
        return turns != null
                ? "screw %s %s turns (%s)".formatted(way(line), Shown.value(Math.abs(turns.value()), turns.u()), amount)
                : (change.value() < 0 ? "take " : "add ")
                        + amount
                        + (line.work() == Correction.Work.ADD ? ", new piece or lining" : "")
                        + (line.work() == Correction.Work.RENEW ? ", new piece" : "");
    }

    /** What fits beside a contact in its drawing; empty where it is left. */
    static String beside(PlannedLink line) {
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

    private static PlannedNumber unsigned(PlannedNumber number) {
        return new PlannedNumber(
                Math.abs(number.value()), number.unit(), number.u(), number.because(), null, null, null);
    }
}
