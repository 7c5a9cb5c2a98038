package hornwright.bench.job;

import hornwright.bench.survey.Reading;

/** A measurement. It takes the place of the former one of the same kind, thing and point. */
@Kind(word = "reading-taken")
public record ReadingTaken(Reading reading) implements JobEdit {
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
