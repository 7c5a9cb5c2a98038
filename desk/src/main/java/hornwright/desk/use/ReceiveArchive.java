package hornwright.desk.use;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Statement;
import hornwright.bench.archive.Witness;
import hornwright.bench.job.EvidenceBroughtIn;
import hornwright.bench.job.EvidenceBroughtIn.Brought;
import hornwright.bench.job.StreamName;
import hornwright.desk.bag.Bag;
import hornwright.desk.bag.BagReader;
import hornwright.desk.bag.UnreadableBag;
import hornwright.desk.journal.EditJson;
import hornwright.desk.picture.CleanPicture;
import hornwright.desk.picture.Darkroom;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tools.jackson.core.JacksonException;

/**
 * Takes in what another shop packed. What is here already is passed over; what an author changed of his own is taken over;
 * what anybody else tells differently is a conflict: it is shown and what is here stays. All of it is one edit.
 */
public record ReceiveArchive(Shop shop) {
    /** What came of it, or would. */
    public record Outcome(
            String from,
            int fresh,
            int changed,
            int known,
            int photos,
            List<String> conflicts,
            Optional<Saved> saved) {}

    /** {@link UnreadableBag} tells everything wrong with the file; then nothing is kept. */
    public Outcome receive(Form form, byte[] zip, boolean only) {
        Bag bag = BagReader.read(zip);
        SharedEvidence shared = evidence(bag);
        Map<String, byte[]> photos = photos(bag);
        Sorting sorting = new Sorting(shared);
        List<Brought> brought = shared.archives().stream()
                .map(sorting.names()::home)
                .map(sorting::sorted)
                .filter(one -> one.size() > 0)
                .toList();
        Optional<Saved> saved = Optional.empty();
        if (!only && !brought.isEmpty()) {
            photos.values().forEach(bytes -> new KeepFile(shop).keep(bytes, CleanPicture.MEDIA));
            saved = Optional.of(shop.save(StreamName.ARCHIVE, form, new EvidenceBroughtIn(shared.name(), brought)));
        }
        return new Outcome(
                shared.name(),
                sorting.fresh,
                sorting.changed,
                sorting.known,
                photos.size(),
                List.copyOf(sorting.conflicts),
                saved);
    }

    private static SharedEvidence evidence(Bag bag) {
        byte[] json = bag.file(ShareArchive.EVIDENCE)
                .orElseThrow(() -> new UnreadableBag(List.of("The bag holds no " + ShareArchive.EVIDENCE + ".")));
        try {
            SharedEvidence shared =
                    EditJson.mapper().readValue(new String(json, StandardCharsets.UTF_8), SharedEvidence.class);
            EditJson.requireWhole(shared);
            if (!shared.format().equals(SharedEvidence.FORMAT) || shared.version() != SharedEvidence.VERSION) {
                throw new UnreadableBag(List.of("The evidence was packed by a newer program."));
            }
            requireNames(shared);
            return shared;
        } catch (JacksonException | hornwright.desk.journal.Unusable e) {
            throw new UnreadableBag(List.of("The file " + ShareArchive.EVIDENCE + " cannot be read: " + firstLine(e)));
        }
    }

    private static String firstLine(RuntimeException e) {
        String all = e instanceof JacksonException parsing ? parsing.getOriginalMessage() : e.getMessage();
        return String.valueOf(all).lines().findFirst().orElse("").replaceFirst(" \\(.*", "") + ".";
    }

    /** Every item says by whom it was written down, so that nobody can overwrite what is ours by naming it. */
    private static void requireNames(SharedEvidence shared) {
        boolean named = shared.archives().stream()
                .flatMap(one -> Stream.concat(
                        one.witnesses().stream().map(Witness::id),
                        Stream.concat(
                                one.observations().stream().map(Observation::id),
                                one.statements().stream()
                                        .map(said -> said.evidence().id()))))
                .allMatch(id -> id.matches("s[0-9a-f]{8}:.{1,120}"));
        if (!named || !shared.sender().matches("s[0-9a-f]{8}") || shared.name().length() > 120) {
            throw new UnreadableBag(List.of("An item in the bag does not say which shop wrote it down."));
        }
    }

    /** Only pictures that are what they are named by, and carry no place, camera or page. */
    private static Map<String, byte[]> photos(Bag bag) {
        Map<String, byte[]> photos = new TreeMap<>();
        List<String> faults = new ArrayList<>();
        bag.files().forEach((path, bytes) -> {
            if (path.startsWith(ShareArchive.PHOTOS)) {
                String hash = path.substring(ShareArchive.PHOTOS.length()).replaceFirst("\\.jpg$", "");
                if (!KeepFile.nameOf(bytes).equals(hash)) {
                    faults.add("The photograph %s is not the one it is named by.".formatted(path));
                } else if (!Darkroom.isClean(bytes)) {
                    faults.add("The photograph %s is no JPEG, or carries more than the picture.".formatted(path));
                }
                photos.put(hash, bytes);
            }
        });
        if (!faults.isEmpty()) {
            throw new UnreadableBag(faults);
        }
        return photos;
    }

    /** Sorts what came into new, changed by its author, known, and told differently. */
    private final class Sorting {
        private final SharedEvidence shared;
        private final SenderNames names = new SenderNames(new ShareArchive(shop).sender());
        private final List<String> conflicts = new ArrayList<>();
        private int fresh;
        private int changed;
        private int known;

        Sorting(SharedEvidence shared) {
            this.shared = shared;
        }

        SenderNames names() {
            return names;
        }

        Brought sorted(Brought came) {
            Archive here = shop.archive().state().of(came.maker());
            Brought ours = names.abroad(Brought.of(here));
            List<Witness> witnesses = taken(came.witnesses(), here.witnesses(), Witness::id, one -> one);
            Map<String, Observation> abroad =
                    ours.observations().stream().collect(Collectors.toMap(Observation::id, one -> one));
            List<Observation> looks = taken(
                    came.observations(),
                    here.observations(),
                    Observation::id,
                    one -> abroad.getOrDefault(abroad(one.id()), one));
            Map<String, Statement> said = ours.statements().stream()
                    .collect(Collectors.toMap(one -> one.evidence().id(), one -> one));
            List<Statement> statements = taken(
                    came.statements(),
                    here.statements(),
                    one -> one.evidence().id(),
                    one -> said.getOrDefault(abroad(one.evidence().id()), one));
            return new Brought(came.maker(), witnesses, withHorn(looks, witnesses, here), statements);
        }

        private String abroad(String id) {
            return SenderNames.isForeign(id) ? id : names.sender() + ":" + id;
        }

        /** Compared as they travel, so that an item that comes home is known. */
        private <T> List<T> taken(List<T> came, List<T> here, Function<T, String> id, Function<T, T> travelling) {
            Map<String, T> byId = here.stream().collect(Collectors.toMap(id, one -> one));
            List<T> taken = new ArrayList<>();
            for (T one : came) {
                String name = id.apply(one);
                T mine = byId.get(name);
                boolean same = mine != null && (mine.equals(one) || equalAbroad(travelling.apply(mine), one));
                if (same) {
                    known++;
                } else if (mine == null && SenderNames.isForeign(name)) {
                    fresh++;
                    taken.add(one);
                } else if (mine != null && SenderNames.author(name).equals(shared.sender())) {
                    changed++;
                    taken.add(one);
                } else {
                    conflicts.add(conflict(name, mine == null));
                }
            }
            return taken;
        }

        private boolean equalAbroad(Object travelling, Object came) {
            return switch (came) {
                case Observation look ->
                    names.abroad(one(look)).observations().getFirst().equals(travelling);
                case Statement said ->
                    names.abroad(one(said)).statements().getFirst().equals(travelling);
                default -> false;
            };
        }

        private static Brought one(Observation look) {
            return new Brought("", List.of(), List.of(look), List.of());
        }

        private static Brought one(Statement said) {
            return new Brought("", List.of(), List.of(), List.of(said));
        }

        private String conflict(String name, boolean takenBack) {
            return takenBack
                    ? "%s was taken back here; it is not brought in again.".formatted(name)
                    : "%s is told differently by %s; what is here stays.".formatted(name, shared.name());
        }

        /** A look needs its horn, here or among what comes. */
        private List<Observation> withHorn(List<Observation> looks, List<Witness> coming, Archive here) {
            List<String> horns = Stream.concat(coming.stream(), here.witnesses().stream())
                    .map(Witness::id)
                    .toList();
            return looks.stream()
                    .filter(look -> {
                        boolean there = horns.contains(look.witness());
                        if (!there) {
                            conflicts.add("%s speaks of the horn %s, which is not here."
                                    .formatted(look.id(), look.witness()));
                        }
                        return there;
                    })
                    .toList();
        }
    }
}
