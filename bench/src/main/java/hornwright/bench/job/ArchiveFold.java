package hornwright.bench.job;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Fitting;
import hornwright.bench.archive.Heard;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Resolution;
import hornwright.bench.archive.SearchLog;
import hornwright.bench.archive.Statement;
import hornwright.bench.archive.Witness;
import hornwright.bench.archive.YearRow;
import hornwright.bench.archive.YearTable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/** How the edits of the archive add up; an item entered again under its id is the later one. */
public record ArchiveFold() implements Folding<Archives> {
    @Override
    public Archives start() {
        return new Archives(Map.of());
    }

    @Override
    public Archives with(Archives archives, Posted posted) {
        return switch (posted.edit()) {
            case WitnessAdded added ->
                archives.with(with(archives.of(added.witness().maker()), added.witness()));
            case ObservationsMade made -> seen(archives, made.observations());
            case StatementAdded added -> archives.with(with(archives.of(added.maker()), added.statement()));
            case FittingAdded added -> archives.with(with(archives.of(added.maker()), added.fitting()));
            case ConflictResolved resolved -> archives.with(with(archives.of(resolved.maker()), resolved.resolution()));
            case SearchLogged logged ->
                archives.with(with(archives.of(logged.maker()), logged.place(), logged.search()));
            case EvidenceBroughtIn brought -> brought(archives, brought);
            case YearRowsBroughtIn brought ->
                archives.with(brought.rows().stream()
                        .reduce(
                                archives.of(brought.maker()),
                                (archive, row) -> years(archive, row.serial(), List.of(row)),
                                (one, other) -> other));
            case YearRowPut put ->
                archives.with(years(archives.of(put.maker()), put.row().serial(), List.of(put.row())));
            case YearRowTaken taken -> archives.with(years(archives.of(taken.maker()), taken.serial(), List.of()));
            default ->
                throw new IllegalStateException("'%s' does not change the archive"
                        .formatted(posted.edit().inWords()));
        };
    }

    private static Archives brought(Archives archives, EvidenceBroughtIn edit) {
        Archives grown = archives;
        for (EvidenceBroughtIn.Brought one : edit.archives()) {
            Archive archive = grown.of(one.maker());
            for (Witness witness : one.witnesses()) {
                archive = with(archive, witness);
            }
            for (Statement statement : one.statements()) {
                archive = with(archive, statement);
            }
            for (Fitting fitting : one.fittings()) {
                archive = with(archive, fitting);
            }
            for (Heard heard : one.heard()) {
                archive = with(archive, heard);
            }
            grown = seen(grown.with(archive), one.observations());
        }
        return grown;
    }

    /** All looks of an edit at once: a bench paints a hundred places in one stroke. */
    private static Archives seen(Archives archives, List<Observation> looks) {
        Map<String, String> makers = new HashMap<>();
        archives.byMaker()
                .values()
                .forEach(archive -> archive.witnesses().forEach(w -> makers.putIfAbsent(w.id(), archive.maker())));
        Map<String, List<Observation>> byMaker = new LinkedHashMap<>();
        for (Observation look : looks) {
            String maker = makers.get(look.witness());
            if (maker == null) {
                throw new IllegalStateException(
                        "observation %s names %s, who is no witness".formatted(look.id(), look.witness()));
            }
            byMaker.computeIfAbsent(maker, none -> new ArrayList<>()).add(look);
        }
        Archives grown = archives;
        for (Map.Entry<String, List<Observation>> more : byMaker.entrySet()) {
            grown = grown.with(with(grown.of(more.getKey()), more.getValue()));
        }
        return grown;
    }

    private static Archive with(Archive a, List<Observation> more) {
        Map<String, Observation> all = new LinkedHashMap<>();
        a.observations().forEach(look -> all.put(look.id(), look));
        for (Observation look : more) {
            all.remove(look.id());
            all.put(look.id(), look);
        }
        return a.withObservations(List.copyOf(all.values()));
    }

    private static Archive with(Archive a, Witness witness) {
        return a.withWitnesses(put(a.witnesses(), witness, Witness::id));
    }

    private static Archive with(Archive a, Statement statement) {
        return a.withStatements(
                put(a.statements(), statement, said -> said.evidence().id()));
    }

    private static Archive with(Archive a, Fitting fitting) {
        return a.withFittings(put(a.fittings(), fitting, one -> one.evidence().id()));
    }

    /** What a shop tells again is added to what it told before. */
    private static Archive with(Archive a, Heard more) {
        Map<String, Heard> byShop = new TreeMap<>();
        a.heard().forEach(shop -> byShop.put(shop.from(), shop));
        byShop.merge(more.from(), more, Heard::and);
        return a.withHeard(List.copyOf(byShop.values()));
    }

    private static Archive with(Archive a, Resolution resolution) {
        return a.withResolutions(put(a.resolutions(), resolution, Resolution::evidence));
    }

    private static Archive with(Archive a, String place, SearchLog search) {
        Map<String, SearchLog> searches = new HashMap<>(a.searches());
        searches.put(place, search);
        return a.withSearches(searches);
    }

    /** What the table says of one serial from now on: a row, or none. */
    private static Archive years(Archive a, long serial, List<YearRow> now) {
        List<YearRow> rows = new ArrayList<>(a.years().rows());
        rows.removeIf(row -> row.serial() == serial);
        rows.addAll(now);
        return a.with(new YearTable(rows));
    }

    private static <T> List<T> put(List<T> all, T item, Function<T, String> id) {
        List<T> changed = new ArrayList<>(all);
        changed.removeIf(one -> id.apply(one).equals(id.apply(item)));
        changed.add(item);
        return changed;
    }
}
