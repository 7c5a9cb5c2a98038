package hornwright.bench.job;

import hornwright.bench.survey.StoredPart;

/** Where a removed original lies; an empty store takes it out of the list again. */
@Kind(word = "part-stored")
public record PartStored(String place, String what, String store) implements JobEdit {
    StoredPart stamped(Posted posted) {
        return new StoredPart(place, what, store, posted.at());
    }

    @Override
    public Fields fields() {
        return Fields.of("stored." + place);
    }

    @Override
    public String inWords() {
        return store.isEmpty()
                ? "the original of %s is no longer kept".formatted(place)
                : "the original of %s lies in %s".formatted(place, store);
    }
}
