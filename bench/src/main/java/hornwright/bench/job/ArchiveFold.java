package hornwright.bench.job;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Resolution;
import hornwright.bench.archive.SearchLog;
import hornwright.bench.archive.Statement;
import hornwright.bench.archive.Witness;
import java.util.ArrayList;
import java.util.HashMap;
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
            case ObservationsMade made -> made.observations().stream().reduce(archives, ArchiveFold::seen, (a, b) -> b);
            case StatementAdded added -> archives.with(with(archives.of(added.maker()), added.statement()));
            case ConflictResolved resolved -> archives.with(with(archives.of(resolved.maker()), resolved.resolution()));
            case SearchLogged logged ->
                archives.with(with(archives.of(logged.maker()), logged.place(), logged.search()));
            default ->
                throw new IllegalStateException("'%s' does not change the archive"
                        .formatted(posted.edit().inWords()));
        };
    }

    private static Archives seen(Archives archives, Observation seen) {
        Archive archive = archives.byMaker().values().stream()
                .filter(one -> one.witnesses().stream().anyMatch(w -> w.id().equals(seen.witness())))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        "observation %s names %s, who is no witness".formatted(seen.id(), seen.witness())));
        return archives.with(new Archive(
                archive.maker(),
                archive.witnesses(),
                put(archive.observations(), seen, Observation::id),
                archive.statements(),
                archive.resolutions(),
                archive.searches()));
    }

    private static Archive with(Archive a, Witness witness) {
        return new Archive(
                a.maker(),
                put(a.witnesses(), witness, Witness::id),
                a.observations(),
                a.statements(),
                a.resolutions(),
                a.searches());
    }

    private static Archive with(Archive a, Statement statement) {
        List<Statement> statements =
                put(a.statements(), statement, said -> said.evidence().id());
        return new Archive(a.maker(), a.witnesses(), a.observations(), statements, a.resolutions(), a.searches());
    }

    private static Archive with(Archive a, Resolution resolution) {
        List<Resolution> resolutions = put(a.resolutions(), resolution, Resolution::evidence);
        return new Archive(a.maker(), a.witnesses(), a.observations(), a.statements(), resolutions, a.searches());
    }

    private static Archive with(Archive a, String place, SearchLog search) {
        Map<String, SearchLog> searches = new HashMap<>(a.searches());
        searches.put(place, search);
        return new Archive(a.maker(), a.witnesses(), a.observations(), a.statements(), a.resolutions(), searches);
    }

    private static <T> List<T> put(List<T> all, T item, Function<T, String> id) {
        List<T> changed = new ArrayList<>(all);
        changed.removeIf(one -> id.apply(one).equals(id.apply(item)));
        changed.add(item);
        return changed;
    }
}
