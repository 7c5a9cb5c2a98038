package hornwright.bench.job;

import hornwright.bench.archive.Fitting;
import hornwright.bench.archive.Stance;

/** Somebody says, or has tried, what fits where on the horns of one maker. */
@Kind(word = "fitting-added")
public record FittingAdded(String maker, Fitting fitting) implements ArchiveEdit {
    @Override
    public Fields fields() {
        return Fields.of("evidence." + fitting.evidence().id());
    }

    @Override
    public String inWords() {
        String fits = fitting.evidence().stance() == Stance.SUPPORTS ? "fits" : "does not fit";
        int places = fitting.places().size();
        return "%s %s %s"
                .formatted(fitting.part(), fits, places == 1 ? fitting.places().getFirst() : places + " places");
    }
}
