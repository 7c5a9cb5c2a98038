package hornwright.bench.archive;

import org.jspecify.annotations.Nullable;

/**
 * One look or statement as it speaks of one place, with what it can carry and why.
 *
 * @param seen the look it is; null for a statement
 * @param against whether a statement says that the material was not there
 * @param strength at the serial asked about
 * @param resolved why it is set aside; null while it stands
 */
public record Item(
        String id,
        SerialRange serials,
        String material,
        boolean against,
        @Nullable Observation seen,
        Evidence evidence,
        Strength strength,
        @Nullable Resolution resolved) {

    static Item of(Observation seen, Witness witness, @Nullable Resolution resolved) {
        Evidence evidence = seen.on(seen.material(), witness);
        SerialRange own = SerialRange.one(witness.serial());
        return new Item(seen.id(), own, seen.material(), false, seen, evidence, Strength.of(evidence, own), resolved);
    }

    static Item of(Statement said, long serial, @Nullable Resolution resolved) {
        Evidence evidence = said.evidence();
        return new Item(
                evidence.id(),
                evidence.serials(),
                said.material(),
                evidence.stance() == Stance.CONTRADICTS,
                null,
                evidence,
                Strength.of(evidence, SerialRange.one(serial)),
                resolved);
    }
}
