package hornwright.bench.job;

import java.util.Collection;
import java.util.Set;

/**
 * What an edit writes, as plain names such as {@code finding.pad.f}. Two edits meet when they write the same name, or
 * when one of them writes everything, as the arrival and an import do.
 */
public record Fields(Set<String> names, boolean everything) {
    public static final Fields ALL = new Fields(Set.of(), true);

    public Fields {
        names = Set.copyOf(names);
    }

    public static Fields of(String... names) {
        return new Fields(Set.of(names), false);
    }

    public static Fields of(String prefix, Collection<String> ids) {
        return new Fields(
                ids.stream().map(id -> prefix + id).collect(java.util.stream.Collectors.toUnmodifiableSet()), false);
    }

    public boolean meets(Fields other) {
        return everything || other.everything || names.stream().anyMatch(other.names::contains);
    }
}
