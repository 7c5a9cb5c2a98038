package hornwright.bench.neck;

import hornwright.bench.sheet.Verdict;
import java.util.List;
import java.util.Optional;

/** What is tried on a neck with hands, eyes and a little air; the first answer is the one that is wanted. */
public enum Check {
    SLIDES(
            "slides",
            "Slides on",
            List.of(
                    new Answer("without rock", Verdict.GOOD, ""),
                    new Answer("rocks", Verdict.ACT, "it rocks: the tenon is too small or out of round"),
                    new Answer(
                            "sticks",
                            Verdict.ACT,
                            "it sticks: look for a burr or an oval before anything is taken off"))),
    CLAMPS(
            "clamp turn",
            "Clamps in",
            List.of(
                    new Answer("a quarter turn", Verdict.GOOD, ""),
                    new Answer("half a turn", Verdict.MAY_STAY, "a little loose: expand the tenon at the next chance"),
                    new Answer(
                            "more than half a turn",
                            Verdict.ACT,
                            "too loose: expand the tenon, do not close the receiver with its screw"),
                    new Answer("does not clamp", Verdict.ACT, "the slot is closed up or the screw is stripped"))),
    SEALS(
            "sealed with the screw off",
            "Screw off, ends plugged",
            List.of(
                    new Answer("seals", Verdict.GOOD, ""),
                    new Answer("leaks", Verdict.ACT, "it leaks with the screw off, so the screw only hides it"))),
    PULL_DOWN(
            "pull-down",
            "Pulled down",
            List.of(
                    new Answer("not at all", Verdict.GOOD, ""),
                    new Answer(
                            "a little",
                            Verdict.MAY_STAY,
                            "pulled down a little: log it, leave it, watch the octave ring"),
                    new Answer(
                            "clearly",
                            Verdict.ACT,
                            "pulled down: straighten it before the tenon is fitted; the octave ring is set again after"))),
    PIP(
            "pip",
            "Octave pip",
            List.of(
                    new Answer("sound", Verdict.GOOD, ""),
                    new Answer("leaks at its foot", Verdict.ACT, "solder its foot before the neck is judged"))),
    BRACE(
            "brace",
            "Brace",
            List.of(
                    new Answer("sound or none", Verdict.GOOD, ""),
                    new Answer("loose", Verdict.ACT, "solder it down, or it lets the neck go down again")));

    private record Answer(String word, Verdict verdict, String says) {}

    private final String point;
    private final String label;
    private final List<Answer> answers;

    Check(String point, String label, List<Answer> answers) {
        this.point = point;
        this.label = label;
        this.answers = answers;
    }

    /** The point of the reading. */
    public String point() {
        return point;
    }

    /** What stands over its field. */
    public String label() {
        return label;
    }

    public List<String> words() {
        return answers.stream().map(Answer::word).toList();
    }

    Verdict verdict(String said) {
        return find(said).map(Answer::verdict).orElse(Verdict.UNTRIED);
    }

    String says(String said) {
        return find(said).map(Answer::says).orElse("");
    }

    private Optional<Answer> find(String said) {
        return answers.stream().filter(answer -> answer.word().equals(said)).findFirst();
    }
}
