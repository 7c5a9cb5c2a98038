package hornwright.desk.use;

import hornwright.bench.job.Job;
import hornwright.desk.bag.Bag;
import hornwright.desk.bag.UnreadableBag;
import hornwright.desk.journal.EditJson;
import hornwright.desk.json.BadInput;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JacksonException;

/**
 * Takes in what another shop looked at and measured on one horn, as a horn of this shop's shelf under its own number. A
 * survey that came before is passed over; one that came before and reads otherwise now is a conflict, and what is here
 * stays.
 */
public record ReceiveSurvey(Shop shop) {
    /**
     * What came of it, or would.
     *
     * @param job number under which it lies here; empty when nothing was kept
     * @param known whether it is here already
     * @param conflict what is told differently; empty for none
     */
    public record Outcome(String from, String title, Optional<String> job, boolean known, String conflict) {}

    /** Whether a bag is a survey and no evidence. */
    public static boolean isSurvey(Bag bag) {
        return bag.file(ShareSurvey.SURVEY).isPresent();
    }

    public Outcome receive(Form form, Bag bag, boolean only) {
        SharedSurvey shared = survey(bag);
        Map<String, byte[]> photos = SharedPhotos.of(bag);
        requirePictures(shared.job(), photos);
        String key = "survey:" + shared.sender() + ":" + shared.job().id();
        boolean before = shop.data().journal().withKey(key).isPresent();
        Outcome outcome = new Outcome(shared.name(), shared.job().title(), Optional.empty(), before, "");
        if (only) {
            return outcome;
        }
        SharedPhotos.keep(shop, photos);
        return switch (new OpenJob(shop).bringIn(new Form(0, form.hand(), key), shared.job())) {
            case Saved.Kept kept -> kept(outcome, kept);
            case Saved.Refused refused -> differs(outcome);
            case Saved.Conflict conflict -> differs(outcome);
        };
    }

    private Outcome kept(Outcome outcome, Saved.Kept kept) {
        String job = kept.stream().jobId();
        boolean gone = shop.job(job).state().isEmpty();
        return new Outcome(
                outcome.from(),
                outcome.title(),
                gone ? Optional.empty() : Optional.of(job),
                outcome.known(),
                gone ? outcome.title() + " was taken back here; it is not brought in again." : "");
    }

    private static Outcome differs(Outcome outcome) {
        return new Outcome(
                outcome.from(),
                outcome.title(),
                Optional.empty(),
                true,
                "%s reads otherwise now than when it came from %s before; what is here stays."
                        .formatted(outcome.title(), outcome.from()));
    }

    private static SharedSurvey survey(Bag bag) {
        byte[] json = bag.file(ShareSurvey.SURVEY).orElseThrow();
        try {
            SharedSurvey shared =
                    EditJson.mapper().readValue(new String(json, StandardCharsets.UTF_8), SharedSurvey.class);
            EditJson.requireWhole(shared);
            boolean named = shared.sender().matches("s[0-9a-f]{8}")
                    && shared.job().id().matches("[a-z0-9-]{1,40}")
                    && shared.name().length() <= 120;
            if (!named || !shared.format().equals(SharedSurvey.FORMAT) || shared.version() != SharedSurvey.VERSION) {
                throw new UnreadableBag(
                        List.of("The survey does not say which shop made it, or was packed by a newer program."));
            }
            if (!shared.job().equals(shared.job().surveyOnly().withoutOriginals())) {
                throw new UnreadableBag(List.of("The survey tells more than what was looked at and measured."));
            }
            Keyworks.of(shared.job());
            return shared;
        } catch (JacksonException | hornwright.desk.journal.Unusable e) {
            throw new UnreadableBag(List.of("The file " + ShareSurvey.SURVEY + " cannot be read."));
        } catch (BadInput pattern) {
            throw new UnreadableBag(List.of("The horn is planned by a pattern this shop does not have."));
        }
    }

    private static void requirePictures(Job job, Map<String, byte[]> photos) {
        List<String> missing = JobFolder.pictures(job).keySet().stream()
                .filter(name -> !photos.containsKey(name))
                .map("The survey names the picture %s, which is not in the bag."::formatted)
                .toList();
        if (!missing.isEmpty()) {
            throw new UnreadableBag(missing);
        }
    }
}
