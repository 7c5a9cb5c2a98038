package hornwright.bench.plan.measured;

import hornwright.bench.horn.Switches;
import hornwright.bench.plan.Warning;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Holds the variants that were read on the horn against those of the keywork it is planned by. */
public final class SwitchesRead {
    private SwitchesRead() {}

    public static List<Warning> warnings(Switches planned, List<Reading> readings) {
        return readings.stream()
                .filter(reading -> reading.kind() == ReadingKind.SWITCH)
                .flatMap(reading -> warning(planned, reading).stream())
                .toList();
    }

    private static Optional<Warning> warning(Switches planned, Reading reading) {
        String has = word(planned, reading.of());
        if (has == null
                || !(reading.observed() instanceof Observed.Says read)
                || read.word().equals(has)) {
            return Optional.empty();
        }
        String words = reading.of() + " is \"" + read.word() + "\" on this horn, the keywork says \"" + has
                + "\": set the switches of this horn, or the plan is of another one";
        return Optional.of(new Warning(Warning.Sort.KEYWORK, words, List.of(reading.of())));
    }

    /** How a switch of the keywork is written; null for one that is no switch of a keywork. */
    private static @Nullable String word(Switches planned, String name) {
        return switch (name) {
            case "sideFSharp" -> String.valueOf(planned.sideFSharp());
            case "highFSharp" -> String.valueOf(planned.highFSharp());
            case "frontF" -> String.valueOf(planned.frontF());
            case "forkedEFlat" -> String.valueOf(planned.forkedEFlat());
            case "bellKeys" -> planned.bellKeys().word();
            case "bellKeyPieces" -> planned.bellKeyPieces().word();
            case "gSharp" -> planned.gSharp().word();
            case "lowCSharp" -> planned.lowCSharp().word();
            case "octaveLevers" -> planned.octaveLevers().word();
            case "sideLevers" -> planned.sideLevers().word();
            default -> null;
        };
    }
}
