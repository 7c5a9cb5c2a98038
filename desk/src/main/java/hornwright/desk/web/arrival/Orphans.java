package hornwright.desk.web.arrival;

import hornwright.bench.horn.Keywork;
import hornwright.bench.job.Job;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.Subject;
import java.util.Optional;
import java.util.stream.Stream;

/** What was written down of a horn that another keywork has no place for. */
final class Orphans {
    private Orphans() {}

    /** The first of them by its id; empty when everything still lies somewhere. */
    static Optional<String> of(Job job, Keywork keywork) {
        Stream<String> readings = job.readings().current().stream()
                .filter(reading -> !there(keywork, reading))
                .map(Reading::of);
        Stream<String> findings = job.findings().places().stream()
                .map(Finding::place)
                .filter(place -> keywork.places().find(place).isEmpty());
        return Stream.concat(readings, findings).findFirst();
    }

    private static boolean there(Keywork keywork, Reading reading) {
        Subject subject = reading.kind().subject();
        String of = reading.of();
        return switch (subject) {
            case CUP -> keywork.cups().find(of).isPresent();
            case HOLE -> keywork.holes().find(of).isPresent();
            case KEY -> keywork.keys().find(of).isPresent();
            case PLACE -> keywork.places().find(of).isPresent();
            case LINK -> keywork.links().find(of).isPresent();
            case HORN -> true;
        };
    }
}
