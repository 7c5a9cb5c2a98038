package hornwright.bench.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.sound.LeakSuspects.Suspect;
import hornwright.bench.survey.PlayTest;
import hornwright.bench.survey.Symptom;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Where to look first for a leak, and what a leak does.
 *
 * @param suspects pads by suspicion, the first one first; empty when the player has complained of nothing
 */
public record LeakAnswer(List<SuspectLine> suspects, Becauses becauses) {
    /** The leak most pads are judged by when nothing else is said, mm. */
    static final double USUAL_MM = 0.65;

    private static final int SHOWN = 5;
    private static final double LEAST_SHARE = 0.01;

    public LeakAnswer {
        suspects = List.copyOf(suspects);
    }

    /**
     * A pad under suspicion.
     *
     * @param share of the suspicion, %
     * @param takes the notes such a leak takes, hardest hit first
     */
    public record SuspectLine(Cup cup, PlannedNumber share, List<Fingering> takes) {
        public SuspectLine {
            takes = List.copyOf(takes);
        }
    }

    /** A note and what a leak takes from it. */
    public record Suffers(Fingering fingering, PlannedNumber lostDb, Symptom says) {}

    /** Where to look first, from what the player said in a test. */
    public static LeakAnswer of(Keywork keywork, LeakSuspects suspects, PlayTest test) {
        Reasons reasons = new Reasons();
        boolean complains = test.answers().values().stream().anyMatch(says -> says != Symptom.SPEAKS);
        List<SuspectLine> lines = !complains
                ? List.of()
                : suspects.ranked(test.answers()).stream()
                        .limit(SHOWN)
                        .filter(suspect -> suspect.share() >= LEAST_SHARE)
                        .map(suspect -> line(keywork, suspects, test, suspect, reasons))
                        .toList();
        return new LeakAnswer(lines, reasons.table());
    }

    private static SuspectLine line(
            Keywork keywork, LeakSuspects suspects, PlayTest test, Suspect suspect, Reasons reasons) {
        Because.Leaf said = new Because.FromReading(
                "sound/said",
                "what the player says of %d notes".formatted(test.answers().size()),
                test.id(),
                "player");
        PlannedNumber answers = reasons.leaf(said, test.answers().size(), "notes", 0);
        PlannedNumber share = reasons.derive(
                "sound/suspect/" + suspect.cup(),
                "how well leaks of 0.3 to 1 mm at this pad explain what the player says, against all pads together; where to look first, not a finding",
                "%",
                in -> 100 * suspect.share(),
                Because.Input.of("said", answers));
        Map<String, Double> lost = suspects.lostDb(suspect.cup(), USUAL_MM);
        List<Fingering> takes = keywork.fingerings().stream()
                .filter(note -> lost.getOrDefault(note.id(), 0.0) > Symptom.NOTICED)
                .sorted(java.util.Comparator.comparingDouble(note -> -lost.getOrDefault(note.id(), 0.0)))
                .toList();
        return new SuspectLine(keywork.cups().get(suspect.cup()), share, takes);
    }

    /** Every note a leak of that size at a cup takes something noticeable from, hardest hit first. */
    public static List<Suffers> suffering(
            Keywork keywork, ShopRules rules, LeakSuspects suspects, Cup cup, double sizeMm, Reasons reasons) {
        Map<String, Double> lost = suspects.lostDb(cup.id(), sizeMm);
        List<Suffers> all = new ArrayList<>();
        for (Fingering note : keywork.fingerings()) {
            double db = lost.getOrDefault(note.id(), 0.0);
            if (db > Symptom.NOTICED) {
                PlannedNumber told = reasons.derive(
                        "sound/leak/%s/%s/%s".formatted(cup.id(), sizeMm, note.id()),
                        "what the sounding resonance of the pattern loses to a round leak of %s mm at this pad x what it does on a real horn"
                                .formatted(sizeMm),
                        "dB",
                        in -> db * in[0],
                        Because.Input.of("real over reckoned", reasons.rule(rules, "sound.leak-times")));
                all.add(new Suffers(note, told, Symptom.of(told.value())));
            }
        }
        all.sort(java.util.Comparator.comparingDouble(one -> -one.lostDb().value()));
        return all;
    }
}
