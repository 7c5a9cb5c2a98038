package hornwright.bench.plan.treatment;

import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.plan.Warning;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What stamped assembly numbers say: parts of one horn carry one number, so a part with another is from elsewhere unless
 * somebody explains it. The quickest strong proof of a mixed horn.
 */
public final class MixedHorn {
    private static final String BODY = "stamp.body";

    private final Keywork keywork;
    private final Map<String, String> stamped = new LinkedHashMap<>();
    private final Map<String, String> explained;

    private MixedHorn(Keywork keywork, List<Finding> findings, List<Reading> readings, List<Decision> decisions) {
        this.keywork = keywork;
        for (Finding finding : findings) {
            if (finding.assemblyNumber() != null) {
                stamped.put(finding.place(), finding.assemblyNumber());
            }
        }
        for (Reading reading : readings) {
            if (reading.kind() == ReadingKind.STAMP && reading.observed() instanceof Observed.Says says) {
                stamped.put(place(reading.of()), says.word());
            }
        }
        this.explained = decisions.stream()
                .flatMap(d -> d instanceof Decision.Treat treat ? Stream.of(treat) : Stream.empty())
                .collect(Collectors.toMap(Decision.Treat::place, Decision.Treat::why, (first, last) -> last));
    }

    public static List<Warning> warnings(
            Keywork keywork, List<Finding> findings, List<Reading> readings, List<Decision> decisions) {
        return new MixedHorn(keywork, findings, readings, decisions).warnings();
    }

    private List<Warning> warnings() {
        Optional<String> own = own();
        if (own.isEmpty()) {
            return List.of();
        }
        return stamped.entrySet().stream()
                .filter(stamp -> !stamp.getValue().equals(own.get()))
                .map(stamp -> warning(stamp.getKey(), stamp.getValue(), own.get()))
                .toList();
    }

    /** The number of the body where it is known, else the one most parts carry. */
    private Optional<String> own() {
        String body = stamped.get(BODY);
        if (body != null) {
            return Optional.of(body);
        }
        Map<String, Long> counts = stamped.values().stream()
                .collect(Collectors.groupingBy(number -> number, LinkedHashMap::new, Collectors.counting()));
        return counts.size() < 2
                ? Optional.empty()
                : counts.entrySet().stream()
                        .max(Comparator.comparingLong(Map.Entry::getValue))
                        .filter(most -> most.getValue() > 1)
                        .map(Map.Entry::getKey);
    }

    private Warning warning(String place, String number, String own) {
        String why = explained.get(place);
        String words = "%s is stamped %s, the body %s: it cannot be original to this body %s"
                .formatted(
                        name(place),
                        number,
                        own,
                        why == null ? "unless somebody explains it" : "unless this holds: " + why);
        return new Warning(Warning.Sort.MIXED_HORN, words, List.of(place));
    }

    private String name(String place) {
        if (place.equals("stamp.neck")) {
            return "The neck";
        }
        return keywork.places()
                .find(place)
                .map(Place::display)
                .or(() -> keywork.keys().find(place).map(key -> key.name().display() + " key"))
                .orElse(place);
    }

    /** A stamp may be read of a part ("neck") as well as of its place. */
    private String place(String of) {
        return keywork.places().contains("stamp." + of) ? "stamp." + of : of;
    }
}
