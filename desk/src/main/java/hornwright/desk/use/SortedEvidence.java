package hornwright.desk.use;

import hornwright.bench.archive.Fitting;
import hornwright.bench.archive.Heard;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Resolution;
import hornwright.bench.archive.SearchLog;
import hornwright.bench.archive.Statement;
import hornwright.bench.archive.Witness;
import hornwright.bench.archive.YearRow;
import hornwright.bench.job.EvidenceBroughtIn.Brought;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Sorts what came from a shop into new, changed by its author, known, and told differently. Both sides are compared by
 * their names abroad, so that an item that comes home is known.
 */
final class SortedEvidence {
    private final SenderNames names;
    private final SharedEvidence shared;
    private final List<String> conflicts = new ArrayList<>();
    private int fresh;
    private int changed;
    private int known;

    SortedEvidence(SenderNames names, SharedEvidence shared) {
        this.names = names;
        this.shared = shared;
    }

    List<String> conflicts() {
        return List.copyOf(conflicts);
    }

    int fresh() {
        return fresh;
    }

    int changed() {
        return changed;
    }

    int known() {
        return known;
    }

    /**
     * What is to be taken in, by its names at home.
     *
     * @param here all that is known of the same maker, by its names abroad
     */
    Brought of(Brought came, Brought here) {
        List<Witness> horns = taken(came.witnesses(), here.witnesses(), Witness::id);
        Set<String> there = Stream.concat(horns.stream(), here.witnesses().stream())
                .map(Witness::id)
                .collect(Collectors.toSet());
        Function<Statement, String> said = one -> one.evidence().id();
        Function<Fitting, String> fits = one -> one.evidence().id();
        return names.home(new Brought(
                came.maker(),
                horns,
                withHorn(taken(came.observations(), here.observations(), Observation::id), there),
                taken(came.statements(), here.statements(), said),
                taken(came.fittings(), here.fittings(), fits),
                heard(came.heard(), here.heard())));
    }

    private <T> List<T> taken(List<T> came, List<T> here, Function<T, String> id) {
        Map<String, T> byId = here.stream().collect(Collectors.toMap(id, one -> one));
        return came.stream()
                .filter(one -> takes(id.apply(one), SenderNames.author(id.apply(one)), byId.get(id.apply(one)), one))
                .toList();
    }

    private List<Heard> heard(List<Heard> came, List<Heard> here) {
        Map<String, Heard> byTeller = here.stream().collect(Collectors.toMap(Heard::from, one -> one));
        Heard nothing = new Heard("", Map.of(), List.of(), List.of());
        return came.stream()
                .map(one -> heard(one, byTeller.getOrDefault(one.from(), nothing)))
                .filter(one -> one.size() > 0)
                .toList();
    }

    private Heard heard(Heard came, Heard here) {
        String teller = came.from();
        Map<String, SearchLog> searches = new TreeMap<>();
        came.searches().forEach((place, log) -> {
            if (takes(teller + ":search for " + place, teller, here.searches().get(place), log)) {
                searches.put(place, log);
            }
        });
        Map<String, Resolution> asides =
                here.resolutions().stream().collect(Collectors.toMap(Resolution::evidence, one -> one));
        Map<Long, YearRow> years = here.years().stream().collect(Collectors.toMap(YearRow::serial, one -> one));
        return new Heard(
                teller,
                searches,
                came.resolutions().stream()
                        .filter(one ->
                                takes(teller + ":aside of " + one.evidence(), teller, asides.get(one.evidence()), one))
                        .toList(),
                came.years().stream()
                        .filter(one -> takes(teller + ":year of " + one.serial(), teller, years.get(one.serial()), one))
                        .toList());
    }

    private boolean takes(String name, String author, @Nullable Object mine, Object came) {
        boolean ours = author.equals(names.sender());
        boolean theirs = author.equals(shared.sender());
        if (Objects.equals(mine, came)) {
            known++;
            return false;
        }
        if (mine == null && !ours) {
            fresh++;
            return true;
        }
        if (mine != null && theirs) {
            changed++;
            return true;
        }
        conflicts.add(
                mine == null
                        ? "%s was taken back here; it is not brought in again.".formatted(name)
                        : "%s is told differently by %s; what is here stays.".formatted(name, shared.name()));
        return false;
    }

    /** A look needs its horn, here or among what comes. */
    private List<Observation> withHorn(List<Observation> looks, Set<String> horns) {
        return looks.stream()
                .filter(look -> {
                    boolean there = horns.contains(look.witness());
                    if (!there) {
                        conflicts.add(
                                "%s speaks of the horn %s, which is not here.".formatted(look.id(), look.witness()));
                    }
                    return there;
                })
                .toList();
    }
}
