package hornwright.desk.use;

import hornwright.bench.archive.Observation;
import hornwright.bench.job.Edit;
import hornwright.bench.job.EvidenceBroughtIn;
import hornwright.bench.job.JobImported;
import hornwright.bench.job.MaterialsFound;
import hornwright.bench.job.ObservationsMade;
import hornwright.bench.job.OriginalKept;
import hornwright.bench.job.PhotoTaken;
import hornwright.bench.job.PhotoTicked;
import hornwright.bench.job.StreamName;
import hornwright.bench.survey.Finding;
import hornwright.desk.journal.Blob;
import hornwright.desk.journal.EditJson;
import hornwright.desk.journal.Entry;
import hornwright.desk.journal.ShopData;
import hornwright.desk.journal.Unusable;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Looks through everything the shop keeps: the database's own check, the chain of the journal, whether every edit can be
 * read and adds up, every photograph and sound byte by byte, and whether the shelf's cards follow from the edits.
 */
public record CheckShop(Shop shop) {
    /** What was looked at, and a sentence for each fault; no fault means all is as it was written. */
    public record Report(long edits, int streams, int people, int files, List<String> faults) {}

    public Report check() {
        return new Walk(shop).report();
    }

    /** One walk through everything; what cannot be read is a fault and the walk goes on. */
    private static final class Walk {
        private final Shop shop;
        private final ShopData data;
        private final List<String> faults = new ArrayList<>();
        private final Set<String> named = new TreeSet<>();
        private long edits;

        Walk(Shop shop) {
            this.shop = shop;
            this.data = shop.data();
        }

        Report report() {
            faults.addAll(
                    looking("The database", List.of(), () -> data.database().faults()));
            faults.addAll(looking("The journal", List.of(), () -> data.journal().checkChain()));
            faults.addAll(shop.readOnlyBecause());
            List<StreamName> streams = looking("The list of streams", List.of(), this::edits);
            streams.forEach(stream -> looking(
                    "The stream " + stream, 0L, () -> shop.history(stream).seq()));
            int people = looking(
                            "The list of people", List.of(), () -> data.people().all())
                    .size();
            int files = files();
            if (faults.isEmpty() && !cardsFollow()) {
                faults.add(
                        "The cards of the shelf do not follow from the edits; they are made anew at the next start.");
            }
            return new Report(
                    edits,
                    streams.size(),
                    people,
                    files,
                    faults.stream().distinct().toList());
        }

        private <T> T looking(String at, T otherwise, Supplier<T> look) {
            try {
                return look.get();
            } catch (Unusable damaged) {
                faults.add(String.valueOf(damaged.getMessage()));
            } catch (RuntimeException unreadable) {
                String why = String.valueOf(unreadable.getMessage());
                faults.add("%s cannot be read: %s"
                        .formatted(at, why.lines().findFirst().orElse(why)));
            }
            return otherwise;
        }

        private List<StreamName> edits() {
            data.journal().readAll(this::edit);
            return data.journal().streams();
        }

        private void edit(Entry entry) {
            edits++;
            looking("An edit", Set.<String>of(), () -> {
                if (EditJson.read(entry) instanceof EditJson.Read.Known known) {
                    named.addAll(filesOf(known.edit()));
                }
                return named;
            });
        }

        private int files() {
            faults.addAll(looking(
                    "The photographs and sounds", List.of(), () -> data.blobs().check()));
            Set<String> kept = looking(
                            "The list of files",
                            List.<Blob>of(),
                            () -> data.blobs().all())
                    .stream()
                    .map(Blob::sha256)
                    .collect(Collectors.toSet());
            named.stream()
                    .filter(file -> !kept.contains(file))
                    .forEach(file -> faults.add("An edit names the file %s, which is not kept.".formatted(file)));
            return kept.size();
        }

        private boolean cardsFollow() {
            return looking(
                    "The cards of the shelf",
                    false,
                    () -> Set.copyOf(data.cards().all()).equals(Set.copyOf(new RebuildCards(shop).made())));
        }
    }

    private static Set<String> filesOf(Edit edit) {
        return switch (edit) {
            case PhotoTicked ticked -> some(Stream.ofNullable(ticked.file()));
            case PhotoTaken taken -> some(Stream.of(taken.file(), taken.small()));
            case OriginalKept original -> Set.of(original.file());
            case JobImported imported -> JobFolder.pictures(imported.job()).keySet();
            case MaterialsFound found ->
                some(found.places().stream().map(Finding::photo).flatMap(Stream::ofNullable));
            case ObservationsMade made ->
                some(made.observations().stream().map(seen -> seen.file()).flatMap(Stream::ofNullable));
            case EvidenceBroughtIn brought ->
                some(brought.archives().stream()
                        .flatMap(one -> one.observations().stream())
                        .map(Observation::file)
                        .flatMap(Stream::ofNullable));
            default -> Set.of();
        };
    }

    private static Set<String> some(Stream<String> files) {
        return files.collect(Collectors.toSet());
    }
}
