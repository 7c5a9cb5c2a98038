package hornwright.bench.job;

import hornwright.bench.archive.Resolution;

/** Why one contradicting item is set aside. */
@Kind(word = "conflict-resolved")
public record ConflictResolved(String maker, Resolution resolution) implements ArchiveEdit {
    @Override
    public Fields fields() {
        return Fields.of("resolution." + resolution.evidence());
    }

    @Override
    public String inWords() {
        return "%s set aside: %s".formatted(resolution.evidence(), resolution.reason());
    }
}
