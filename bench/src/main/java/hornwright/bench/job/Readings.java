package hornwright.bench.job;

import hornwright.bench.survey.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was measured. One reading stands for each kind, thing and point; a series of repeats stands together.
 *
 * @param current what counts now
 * @param former readings of an earlier stage that a later one replaced, for comparing before and after
 */
public record Readings(List<Reading> current, List<Reading> former) {
    public static final Readings NONE = new Readings(List.of(), List.of());

    public Readings {
        current = List.copyOf(current);
        former = List.copyOf(former);
    }

    public Optional<Reading> find(String id) {
        return current.stream().filter(reading -> reading.id().equals(id)).findFirst();
    }

    /** The horn as it was at this stage, from what counts now and what has been replaced since. */
    public List<Reading> at(hornwright.bench.survey.Stage stage) {
        return java.util.stream.Stream.concat(former.stream(), current.stream())
                .filter(reading -> reading.stage() == stage)
                .toList();
    }

    /** Whether it was measured again once the horn had left that stage. */
    public boolean measuredAfter(
            hornwright.bench.survey.Stage stage, hornwright.bench.survey.ReadingKind kind, String of) {
        return current.stream()
                .anyMatch(reading -> reading.kind() == kind
                        && reading.of().equals(of)
                        && reading.stage().compareTo(stage) > 0);
    }

    /** With one more reading; of the same stage it corrects the one before it, of a later stage it follows it. */
    Readings taken(Reading fresh) {
        List<Reading> standing = new ArrayList<>();
        List<Reading> past = new ArrayList<>(former);
        for (Reading reading : current) {
            if (!replaces(fresh, reading)) {
                standing.add(reading);
            } else if (reading.stage() != fresh.stage() && !reading.id().equals(fresh.id())) {
                past.add(reading);
            }
        }
        standing.add(fresh);
        return new Readings(standing, past);
    }

    Readings withdrawn(String id) {
        return new Readings(
                current.stream().filter(reading -> !reading.id().equals(id)).toList(), former);
    }

    private static boolean replaces(Reading fresh, Reading reading) {
        boolean repeats = fresh.series() != null && fresh.series().equals(reading.series());
        return reading.id().equals(fresh.id()) || (aboutSame(fresh, reading) && !repeats);
    }

    private static boolean aboutSame(Reading a, Reading b) {
        return a.kind() == b.kind() && a.of().equals(b.of()) && a.point().equals(b.point());
    }
}
