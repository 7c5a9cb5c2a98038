package hornwright.bench.neck;

import hornwright.bench.sheet.Verdict;
import hornwright.bench.survey.NeckCheck;
import java.util.List;

/** What each answer to a check of the neck means for the work; the one that is wanted asks for nothing. */
public enum Check {
    SLIDES(
            NeckCheck.SLIDES,
            "Slides on",
            act("it rocks: the tenon is too small or out of round"),
            act("it sticks: look for a burr or an oval before anything is taken off")),
    CLAMPS(
            NeckCheck.CLAMPS,
            "Clamps in",
            stays("a little loose: expand the tenon at the next chance"),
            act("too loose: expand the tenon, do not close the receiver with its screw"),
            act("the slot is closed up or the screw is stripped")),
    SEALS(NeckCheck.SEALS, "Screw off, ends plugged", act("it leaks with the screw off, so the screw only hides it")),
    PULL_DOWN(
            NeckCheck.PULL_DOWN,
            "Pulled down",
            stays("pulled down a little: log it, leave it, watch the octave ring"),
            act("pulled down: straighten it before the tenon is fitted; the octave ring is set again after")),
    PIP(NeckCheck.PIP, "Octave pip", act("solder its foot before the neck is judged")),
    BRACE(NeckCheck.BRACE, "Brace", act("solder it down, or it lets the neck go down again"));

    private record Meaning(Verdict verdict, String says) {}

    private final NeckCheck check;
    private final String label;
    private final List<Meaning> otherwise;

    /** @param otherwise what the answers after the wanted one mean, in their order */
    Check(NeckCheck check, String label, Meaning... otherwise) {
        this.check = check;
        this.label = label;
        this.otherwise = List.of(otherwise);
    }

    /** The point of the reading. */
    public String point() {
        return check.point();
    }

    /** What stands over its field. */
    public String label() {
        return label;
    }

    public List<String> words() {
        return check.words();
    }

    Verdict verdict(String said) {
        return meaning(said).verdict();
    }

    String says(String said) {
        return meaning(said).says();
    }

    private Meaning meaning(String said) {
        int badness = check.badness(said);
        if (badness < 0) {
            return new Meaning(Verdict.UNTRIED, "");
        }
        return badness == 0 ? new Meaning(Verdict.GOOD, "") : otherwise.get(badness - 1);
    }

    private static Meaning act(String says) {
        return new Meaning(Verdict.ACT, says);
    }

    private static Meaning stays(String says) {
        return new Meaning(Verdict.MAY_STAY, says);
    }
}
