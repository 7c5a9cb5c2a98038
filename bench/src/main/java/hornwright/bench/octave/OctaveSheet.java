package hornwright.bench.octave;

import hornwright.bench.horn.Key;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.ClearanceBand;
import hornwright.bench.plan.measured.ReadNumbers;
import hornwright.bench.sheet.SheetAnswer;
import hornwright.bench.sheet.SheetAsked;
import hornwright.bench.sheet.SheetLine;
import hornwright.bench.sheet.Verdict;
import hornwright.bench.survey.NeckCheck;
import hornwright.bench.survey.ReadingKind;
import java.util.ArrayList;
import java.util.List;

/** The sheet of the octave mechanism and the low table. Bands are bench judgement and rules of the shop. */
public final class OctaveSheet {
    /** Points of a clearance at the low table. */
    public static final String AT_REST = ClearanceBand.AT_REST;

    public static final String DOWN = ClearanceBand.DOWN;

    /** Point of a reading of lost motion. */
    public static final String FINGERTIP = "at the fingertip";

    /** Point of a neck check: what the ring does when the neck is turned. */
    public static final String TURNED = NeckCheck.TURNED.point();

    /** Line of that check. */
    public static final String TURNED_LINE = "turned";

    private OctaveSheet() {}

    public static SheetAnswer of(SheetAsked ask) {
        Reasons reasons = new Reasons();
        ReadNumbers read = new ReadNumbers(ask.rules(), reasons);
        States states = new States(ask, read);
        Table table = new Table(ask, reasons, read);
        List<SheetLine> lines = new ArrayList<>(states.lines());
        lines.add(turned(ask));
        lines.addAll(table.lines());
        lines.addAll(table.lostMotion());
        List<String> order = new ArrayList<>(states.order());
        if (!order.isEmpty()) {
            order.add("Then turn the neck 20° either way in every state, and read all four again");
        }
        order.addAll(table.order());
        return new SheetAnswer(summary(lines), lines, order, reasons.table());
    }

    /** A line is one contact in one state. */
    public static String id(String link, String state) {
        return link + " " + state;
    }

    /** Touches under which lost motion is felt: the table and the thumb. */
    public static List<Key> touches(Keywork keywork) {
        return keywork.keys()
                .where(key -> key.touch() != null && (key.group() == KeyGroup.TABLE || key.group() == KeyGroup.OCTAVE));
    }

    /** The contact in words: "octave thumb lever opens neck octave vent". */
    public static String name(Keywork keywork, Link link) {
        return "%s %s %s"
                .formatted(
                        keywork.keys().get(link.driver()).name().display(),
                        link.kind().verb(),
                        keywork.keys().get(link.follower()).name().display());
    }

    private static SheetLine turned(SheetAsked ask) {
        return switch (ask.word(ReadingKind.NECK_CHECK, "neck", TURNED)) {
            case "free" -> SheetLine.of(TURNED_LINE, Verdict.GOOD, "");
            case "rubs" ->
                SheetLine.of(TURNED_LINE, Verdict.MAY_STAY, "the ring rubs: make it round and centre it on the neck");
            case "opens the vent" ->
                SheetLine.of(
                        TURNED_LINE,
                        Verdict.ACT,
                        "a turned neck opens the vent: the ring is out of round or too close");
            default -> SheetLine.untried(TURNED_LINE);
        };
    }

    private static String summary(List<SheetLine> lines) {
        long tried =
                lines.stream().filter(line -> line.verdict() != Verdict.UNTRIED).count();
        long wrong =
                lines.stream().filter(line -> line.verdict() == Verdict.ACT).count();
        if (tried == 0) {
            return "Nothing read yet. Four states: thumb up and down, G up and down.";
        }
        String read = "%d of %d read; ".formatted(tried, lines.size());
        return read
                + (wrong == 0
                        ? "all of them are right."
                        : wrong == 1 ? "one is to be set." : wrong + " are to be set.");
    }
}
