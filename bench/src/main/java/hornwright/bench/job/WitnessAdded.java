package hornwright.bench.job;

import hornwright.bench.archive.Witness;

/** A horn somebody looked at, new to the archive or described again. */
@Kind(word = "witness-added")
public record WitnessAdded(Witness witness) implements ArchiveEdit {
    @Override
    public Fields fields() {
        return Fields.of("witness." + witness.id());
    }

    @Override
    public String inWords() {
        return "witness %s: %s %d".formatted(witness.id(), witness.voice().word(), witness.serial());
    }
}
