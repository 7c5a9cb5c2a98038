package hornwright.bench.job;

import hornwright.bench.archive.SearchLog;

/** Where and for what somebody looked, for one place of one maker's horns. */
@Kind(word = "search-logged")
public record SearchLogged(String maker, String place, SearchLog search) implements ArchiveEdit {
    @Override
    public Fields fields() {
        return Fields.of("search.%s.%s".formatted(maker, place));
    }

    @Override
    public String inWords() {
        return "looked for %s in %s".formatted(place, search.where());
    }
}
