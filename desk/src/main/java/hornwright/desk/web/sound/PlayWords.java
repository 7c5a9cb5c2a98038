package hornwright.desk.web.sound;

import hornwright.bench.survey.PlayTest;
import hornwright.bench.survey.PlayTest.Conditions;
import hornwright.bench.survey.Stage;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.Written;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A play test in a line. */
final class PlayWords {
    private PlayWords() {}

    /** "At arrival, 2 March 2026: 32 notes by microphone". */
    static String title(PlayTest test) {
        String stage = test.stage() == Stage.ARRIVAL
                ? "At arrival"
                : "Work come to “" + test.stage().word() + "”";
        Instant when = test.when();
        String day = when == null ? "" : ", " + Clocks.day(when);
        String what = test.notes().isEmpty()
                ? "%d answers".formatted(test.answers().size())
                : "%d notes, %s".formatted(test.notes().size(), test.heardBy().word());
        return stage + day + ": " + what;
    }

    /** "A4 = 442 Hz, 21 °C, mouthpiece: the owner's, 17 mm on, reed: cane 2½". */
    static String inWords(Conditions conditions) {
        List<String> words = new ArrayList<>(List.of("A4 = " + Written.plain(conditions.referenceHz()) + " Hz"));
        if (conditions.temperatureDegC() != null) {
            words.add(Written.plain(conditions.temperatureDegC()) + " °C");
        }
        if (!conditions.mouthpiece().isBlank()) {
            words.add("mouthpiece: " + conditions.mouthpiece());
        }
        if (conditions.insertionMm() != null) {
            words.add(Written.plain(conditions.insertionMm()) + " mm on the cork");
        }
        if (!conditions.reed().isBlank()) {
            words.add("reed: " + conditions.reed());
        }
        return String.join(", ", words);
    }

    /** What was not the same in the later session, "19 mm on the cork, not 17"; what was not said either time is left out. */
    static List<String> differing(Conditions earlier, Conditions later) {
        List<String> words = new ArrayList<>();
        said("mouthpiece: ", earlier.mouthpiece(), later.mouthpiece(), "", words);
        said("reed: ", earlier.reed(), later.reed(), "", words);
        said("", written(earlier.insertionMm()), written(later.insertionMm()), " mm on the cork", words);
        said("", written(earlier.temperatureDegC()), written(later.temperatureDegC()), " °C", words);
        return words;
    }

    private static String written(@Nullable Double value) {
        return value == null ? "" : Written.plain(value);
    }

    private static void said(String what, String earlier, String later, String unit, List<String> words) {
        if (!earlier.isBlank() && !later.isBlank() && !earlier.equals(later)) {
            words.add("%s%s%s, not %s".formatted(what, later, unit, earlier));
        }
    }

    static String inWords(PlayTest test) {
        return title(test) + ". " + inWords(test.conditions()) + ".";
    }
}
