package hornwright.desk.use;

import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Resolution;
import hornwright.bench.archive.Witness;
import hornwright.bench.job.EvidenceBroughtIn;
import hornwright.bench.job.EvidenceBroughtIn.Brought;
import hornwright.bench.job.StreamName;
import hornwright.desk.bag.Bag;
import hornwright.desk.bag.BagReader;
import hornwright.desk.bag.UnreadableBag;
import hornwright.desk.journal.EditJson;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tools.jackson.core.JacksonException;

/**
 * Takes in what another shop packed. What is here already is passed over; what an author changed of his own is taken over;
 * what anybody else tells differently is a conflict: it is shown and what is here stays. All of it is one edit.
 */
public record ReceiveArchive(Shop shop) {
    private static final String SENDER = "s[0-9a-f]{8}";

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
        return receive(form, BagReader.read(zip), only);
    }

    public Outcome receive(Form form, Bag bag, boolean only) {
        SharedEvidence shared = evidence(bag);
        Map<String, byte[]> photos = SharedPhotos.of(bag);
        SenderNames names = new SenderNames(new ShareArchive(shop).sender());
        SortedEvidence sorted = new SortedEvidence(names, shared);
        List<Brought> brought = shared.archives().stream()
                .map(came -> sorted.of(came, here(names, came.maker())))
                .filter(one -> one.size() > 0)
                .toList();
        Optional<Saved> saved = Optional.empty();
        if (!only && !brought.isEmpty()) {
            SharedPhotos.keep(shop, photos);
            saved = Optional.of(shop.save(StreamName.ARCHIVE, form, new EvidenceBroughtIn(shared.name(), brought)));
        }
        return new Outcome(
                shared.name(),
                sorted.fresh(),
                sorted.changed(),
                sorted.known(),
                photos.size(),
                sorted.conflicts(),
                saved);
    }

    private Brought here(SenderNames names, String maker) {
        return names.abroad(SharedPart.ALL.of(shop.archive().state().of(maker)));
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
                .flatMap(ReceiveArchive::ids)
                .allMatch(id -> id.matches(SENDER + ":.{1,120}"));
        boolean told = shared.archives().stream()
                .flatMap(one -> one.heard().stream())
                .allMatch(heard -> heard.from().matches(SENDER));
        if (!named || !told || !shared.sender().matches(SENDER) || shared.name().length() > 120) {
            throw new UnreadableBag(List.of("An item in the bag does not say which shop wrote it down."));
        }
    }

    private static Stream<String> ids(Brought one) {
        return Stream.of(
                        one.witnesses().stream().map(Witness::id),
                        one.observations().stream().map(Observation::id),
                        one.statements().stream().map(said -> said.evidence().id()),
                        one.fittings().stream().map(said -> said.evidence().id()),
                        one.heard().stream()
                                .flatMap(heard -> heard.resolutions().stream().map(Resolution::evidence)))
                .flatMap(all -> all);
    }
}
