package hornwright.bench.job;

import hornwright.bench.survey.Reading;

/** A measurement. It takes the place of the former one of the same kind, thing and point. */
@Kind(word = "reading-taken")
public record ReadingTaken(Reading reading) implements JobEdit {
    /** The reading with the hand and the time it was written down by, where it does not say itself. */
    Reading stamped(Posted posted) {
        return new Reading(
                reading.id(),
                reading.kind(),
                reading.of(),
                reading.point(),
                reading.observed(),
                reading.instrument(),
                reading.raw(),
                reading.who().isEmpty() ? posted.who() : reading.who(),
                reading.when() == null ? posted.at() : reading.when(),
                reading.stage(),
                reading.series());
    }

    @Override
    public Fields fields() {
        return Fields.of(
                "reading." + reading.id(), "%s.%s.%s".formatted(reading.kind().word(), reading.of(), reading.point()));
    }

    @Override
    public String inWords() {
        return "%s of %s: %s"
                .formatted(
                        reading.kind().word(), reading.of(), reading.observed().inWords());
    }
}
