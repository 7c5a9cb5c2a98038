package hornwright.desk.use;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Evidence;
import hornwright.bench.archive.Fitting;
import hornwright.bench.archive.Heard;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Resolution;
import hornwright.bench.archive.SearchLog;
import hornwright.bench.archive.SerialRange;
import hornwright.bench.archive.Statement;
import hornwright.bench.archive.Witness;
import hornwright.bench.archive.YearRow;
import hornwright.bench.job.EvidenceBroughtIn.Brought;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Which part of what is known is to leave; a mark that is null takes everything.
 *
 * @param maker whose horns
 * @param place only what speaks of this place
 * @param serials only what speaks of these serials
 * @param origin only what comes from this paper, person, book or horn
 */
public record SharedPart(
        @Nullable String maker,
        @Nullable String place,
        @Nullable SerialRange serials,
        @Nullable String origin) {
    public static final SharedPart ALL = new SharedPart(null, null, null, null);

    public static SharedPart of(@Nullable String maker) {
        return new SharedPart(maker, null, null, null);
    }

    boolean takes(Archive archive) {
        return maker == null || archive.maker().equals(maker);
    }

    /** The part, with this shop's own searches, asides and years under {@link SenderNames#OWN}. */
    Brought of(Archive archive) {
        Map<String, Witness> horns = archive.witnesses().stream()
                .filter(horn -> serials == null || serials.contains(horn.serial()))
                .collect(Collectors.toMap(Witness::id, horn -> horn));
        List<Observation> looks = archive.observations().stream()
                .filter(look -> horns.containsKey(look.witness()) && isOf(look.place()))
                .filter(look -> isFrom(look.origin().id()))
                .toList();
        boolean whole = place == null && origin == null;
        Set<String> seen = looks.stream().map(Observation::witness).collect(Collectors.toSet());
        List<Statement> said = archive.statements().stream()
                .filter(one -> isOf(one.place()) && takes(one.evidence()))
                .toList();
        List<Fitting> fittings = archive.fittings().stream()
                .filter(one -> one.places().stream().anyMatch(this::isOf) && takes(one.evidence()))
                .toList();
        Set<String> items = new HashSet<>();
        looks.forEach(look -> items.add(look.id()));
        Stream.concat(said.stream().map(Statement::evidence), fittings.stream().map(Fitting::evidence))
                .forEach(evidence -> items.add(evidence.id()));
        return new Brought(
                archive.maker(),
                archive.witnesses().stream()
                        .filter(horn -> horns.containsKey(horn.id()) && (whole || seen.contains(horn.id())))
                        .toList(),
                looks,
                said,
                fittings,
                tellers(archive).stream()
                        .map(one -> cut(one, items))
                        .filter(one -> one.size() > 0)
                        .toList());
    }

    private static List<Heard> tellers(Archive archive) {
        List<Heard> tellers = new ArrayList<>();
        tellers.add(new Heard(
                SenderNames.OWN,
                archive.searches(),
                archive.resolutions(),
                archive.years().rows()));
        tellers.addAll(archive.heard());
        return tellers;
    }

    /** A search is of places, a year of serials, and an aside goes with the item it speaks of. */
    private Heard cut(Heard all, Set<String> items) {
        Map<String, SearchLog> searches = new TreeMap<>();
        if (origin == null) {
            all.searches().forEach((of, log) -> {
                if (isOf(of)) {
                    searches.put(of, log);
                }
            });
        }
        List<Resolution> asides = all.resolutions().stream()
                .filter(aside -> isWhole() || items.contains(aside.evidence()))
                .toList();
        List<YearRow> years = place != null || origin != null
                ? List.of()
                : all.years().stream()
                        .filter(row -> serials == null || serials.contains(row.serial()))
                        .toList();
        return new Heard(all.from(), searches, asides, years);
    }

    private boolean isWhole() {
        return place == null && serials == null && origin == null;
    }

    private boolean isOf(String other) {
        return place == null || place.equals(other);
    }

    private boolean isFrom(String other) {
        return origin == null || origin.equals(other);
    }

    private boolean takes(Evidence evidence) {
        return isFrom(evidence.origin().id()) && (serials == null || serials.meets(evidence.serials()));
    }
}
