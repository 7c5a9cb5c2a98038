package hornwright.bench.plan.order;

import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.TradeNames;
import hornwright.bench.survey.Reading;

/** Says in one line what a later reading changed, by trade names. */
final class ReadingWords {
    private final Keywork keywork;

    ReadingWords(Keywork keywork) {
        this.keywork = keywork;
    }

    /** "cup of low E♭ measured again: 33.1 mm, was 32.8 mm"; "worst rim gap of D: 0.12 mm at 4 o'clock". */
    String why(Reading reading, Wanted is, Wanted was) {
        String what = what(reading);
        Wanted.Figure before = was.read();
        if (is instanceof Wanted.Decided || is instanceof Wanted.Noted) {
            return "%s: %s".formatted(what, reading.observed().inWords());
        }
        if (before == null) {
            return "%s reads %s".formatted(what, reading.observed().inWords());
        }
        return "%s measured again: %s, was %s"
                .formatted(what, reading.observed().inWords(), before.words());
    }

    /** The trade name of what was worked on or measured; steps and unknown things keep their id. */
    String name(String of) {
        return TradeNames.of(keywork, of);
    }

    private String what(Reading reading) {
        String kind = reading.kind().word().replaceFirst(" inside diameter$", "");
        String point = reading.point().isEmpty() ? "" : ", " + reading.point();
        return switch (reading.kind()) {
            case NECK, NECK_CHECK -> "neck" + point;
            case LEAK -> "total leak";
            case PIN -> "pin";
            case FINISH_SIGN -> "finish" + point;
            default -> "%s of %s%s".formatted(kind, name(reading.of()), point);
        };
    }
}
