package hornwright.desk.web.view;

import hornwright.bench.survey.PlayTest;
import hornwright.bench.survey.PlayTest.Conditions;
import hornwright.bench.survey.Stage;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

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

    static String inWords(PlayTest test) {
        return title(test) + ". " + inWords(test.conditions()) + ".";
    }
}
