package hornwright.bench.body;

import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a photograph can be taken of by its id: a place, a pin on the tube, a sign of the finish, a stamped number. */
public final class Pictured {
    private static final String SIGN = "finish.";
    private static final String STAMP = "stamp.";

    private Pictured() {}

    /** Of a sign of the finish: {@code finish.engraving}. */
    public static String id(FinishSign sign) {
        return SIGN + sign.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Of the number stamped on a part: {@code stamp.neck}. */
    public static String stamp(String part) {
        return STAMP + part;
    }

    public static boolean isOfTheFinish(String id) {
        return id.startsWith(SIGN) || id.startsWith(STAMP);
    }

    /** How it is called; empty for an id that stands for nothing on this horn. */
    public static Optional<String> name(Keywork keywork, Collection<Reading> readings, String id) {
        return keywork.places()
                .find(id)
                .map(Place::display)
                .or(() -> pin(keywork, readings, id))
                .or(() -> sign(id))
                .or(() -> FinishSheet.STAMPED.stream()
                        .filter(part -> stamp(part).equals(id))
                        .findFirst()
                        .map(part -> "number stamped on the " + part));
    }

    private static Optional<String> pin(Keywork keywork, Collection<Reading> readings, String id) {
        return readings.stream()
                .filter(reading -> reading.of().equals(id))
                .flatMap(reading -> reading.observed() instanceof Observed.Pin pin ? Stream.of(pin) : Stream.empty())
                .reduce((first, second) -> second)
                .map(pin -> "%s on the %s"
                        .formatted(
                                pin.sort().word(),
                                keywork.tube().partAt(pin.atMm()).word()));
    }

    private static Optional<String> sign(String id) {
        return Stream.of(FinishSign.values())
                .filter(sign -> id(sign).equals(id))
                .findFirst()
                .map(FinishSign::point);
    }
}
