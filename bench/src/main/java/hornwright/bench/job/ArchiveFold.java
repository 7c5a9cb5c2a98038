package hornwright.bench.job;

import hornwright.bench.archive.Archive;
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
            case ConflictResolved resolved -> archives.with(with(archives.of(resolved.maker()), resolved.resolution()));
            case SearchLogged logged ->
                archives.with(with(archives.of(logged.maker()), logged.place(), logged.search()));
            case EvidenceBroughtIn brought -> brought(archives, brought);
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
        return new Archive(
                a.maker(),
                a.witnesses(),
                List.copyOf(all.values()),
                a.statements(),
                a.resolutions(),
                a.searches(),
                a.years());
    }

    private static Archive with(Archive a, Witness witness) {
        return new Archive(
                a.maker(),
                put(a.witnesses(), witness, Witness::id),
                a.observations(),
                a.statements(),
                a.resolutions(),
                a.searches(),
                a.years());
    }

    private static Archive with(Archive a, Statement statement) {
        List<Statement> statements =
                put(a.statements(), statement, said -> said.evidence().id());
        return new Archive(
                a.maker(), a.witnesses(), a.observations(), statements, a.resolutions(), a.searches(), a.years());
    }

    private static Archive with(Archive a, Resolution resolution) {
        List<Resolution> resolutions = put(a.resolutions(), resolution, Resolution::evidence);
        return new Archive(
                a.maker(), a.witnesses(), a.observations(), a.statements(), resolutions, a.searches(), a.years());
    }

    private static Archive with(Archive a, String place, SearchLog search) {
        Map<String, SearchLog> searches = new HashMap<>(a.searches());
        searches.put(place, search);
        return new Archive(
                a.maker(), a.witnesses(), a.observations(), a.statements(), a.resolutions(), searches, a.years());
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
