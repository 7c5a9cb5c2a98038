package hornwright.bench.job;

import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Chronicle;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.PlayTest;
import hornwright.bench.survey.Shot;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.WorkDone;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One horn on the bench: what the edits of its stream add up to. Immutable; {@link JobFold} makes the next from an edit.
 *
 * @param id short and stable, as in {@code q-0007}
 * @param openedAt when it was first written down
 * @param decisions what a person settled, by {@link Decision#about}
 * @param stage the furthest the work has come
 * @param work what was done to it, in order; sign-offs of steps are among it
 * @param notes text by what it is about: {@code job} or a place
 * @param photos ticks of the photograph list, by shot
 * @param playTests sessions in which it was played, in order; a job written before there were any has none
 * @param keeping photographs and removed originals; a job written before there were any has none
 * @param chronicle in which order all this came, as far as signatures care; a job written before it was kept has none
 */
public record Job(
        String id,
        Instant openedAt,
        Identity identity,
        Arrival arrival,
        Readings readings,
        Findings findings,
        Map<String, Decision> decisions,
        Stage stage,
        List<WorkDone> work,
        Map<String, String> notes,
        Map<String, PhotoTick> photos,
        List<PlayTest> playTests,
        Keeping keeping,
        Chronicle chronicle) {
    public Job {
        decisions = inOrder(decisions);
        work = List.copyOf(work);
        notes = inOrder(notes);
        photos = inOrder(photos);
        playTests = absent(playTests) ? List.of() : List.copyOf(playTests);
        keeping = absent(keeping) ? Keeping.NONE : keeping;
        chronicle = absent(chronicle) ? Chronicle.NONE : chronicle;
    }

    public static Job opened(String id, Instant at, Identity identity, Arrival arrival) {
        return new Job(
                id,
                at,
                identity,
                arrival,
                Readings.NONE,
                Findings.NONE,
                Map.of(),
                Stage.ARRIVAL,
                List.of(),
                Map.of(),
                Map.of(),
                List.of(),
                Keeping.NONE,
                Chronicle.NONE);
    }

    /** What the horn was agreed to be for, when that was settled. */
    public Optional<AgreedUse> agreedUse() {
        return decisions.get("use") instanceof Decision.Use use ? Optional.of(use.use()) : Optional.empty();
    }

    /** "alto 41207 by Tarrant & Loe". */
    public String title() {
        return identity.maker().isEmpty() ? identity.inWords() : identity.inWords() + " by " + identity.maker();
    }

    /** Whether this photograph of the list was taken: ticked, or put in. */
    public boolean isTaken(Shot shot) {
        return photos.containsKey(shot.id())
                || keeping.photos().values().stream()
                        .anyMatch(photo -> shot.id().equals(photo.shot()));
    }

    /** The same job under another id, as an import files it. */
    public Job as(String otherId) {
        return new Job(
                otherId, openedAt, identity, arrival, readings, findings, decisions, stage, work, notes, photos,
                playTests, keeping, chronicle);
    }

    /** Without the cameras' own files, which tell where and with what a photograph was taken. */
    public Job withoutOriginals() {
        return with(keeping.withoutOriginals());
    }

    /** What was looked at and measured, and nothing of whose horn it is, what was said, settled, done or played. */
    public Job surveyOnly() {
        return new Job(
                id,
                openedAt,
                identity,
                new Arrival(null, ""),
                readings,
                findings,
                Map.of(),
                stage,
                List.of(),
                Map.of(),
                photos,
                List.of(),
                new Keeping(keeping.photos(), Map.of()),
                Chronicle.NONE);
    }

    Job with(Identity changed) {
        return new Job(
                id, openedAt, changed, arrival, readings, findings, decisions, stage, work, notes, photos, playTests,
                keeping, chronicle);
    }

    /** The same horn, another owner or complaint. */
    public Job with(Arrival changed) {
        return new Job(
                id, openedAt, identity, changed, readings, findings, decisions, stage, work, notes, photos, playTests,
                keeping, chronicle);
    }

    Job with(Readings changed) {
        return new Job(
                id, openedAt, identity, arrival, changed, findings, decisions, stage, work, notes, photos, playTests,
                keeping, chronicle);
    }

    Job with(Findings changed) {
        return new Job(
                id, openedAt, identity, arrival, readings, changed, decisions, stage, work, notes, photos, playTests,
                keeping, chronicle);
    }

    Job with(Stage reached) {
        return new Job(
                id, openedAt, identity, arrival, readings, findings, decisions, reached, work, notes, photos, playTests,
                keeping, chronicle);
    }

    Job with(Decision decision) {
        return withDecisions(put(decisions, decision.about(), decision));
    }

    Job withoutDecision(String about) {
        return withDecisions(without(decisions, about));
    }

    private Job withDecisions(Map<String, Decision> changed) {
        return new Job(
                id, openedAt, identity, arrival, readings, findings, changed, stage, work, notes, photos, playTests,
                keeping, chronicle);
    }

    Job with(WorkDone done) {
        List<WorkDone> more = new ArrayList<>(work);
        more.add(done);
        return new Job(
                id, openedAt, identity, arrival, readings, findings, decisions, stage, more, notes, photos, playTests,
                keeping, chronicle);
    }

    Job withNote(String about, String text) {
        Map<String, String> changed = text.isEmpty() ? without(notes, about) : put(notes, about, text);
        return new Job(
                id, openedAt, identity, arrival, readings, findings, decisions, stage, work, changed, photos, playTests,
                keeping, chronicle);
    }

    Job withPhoto(PhotoTick tick) {
        return withPhotos(put(photos, tick.shot(), tick));
    }

    Job withoutPhoto(String shot) {
        return withPhotos(without(photos, shot));
    }

    private Job withPhotos(Map<String, PhotoTick> changed) {
        return new Job(
                id, openedAt, identity, arrival, readings, findings, decisions, stage, work, notes, changed, playTests,
                keeping, chronicle);
    }

    Job with(PlayTest test) {
        List<PlayTest> changed = new ArrayList<>(playTests);
        changed.removeIf(other -> other.id().equals(test.id()));
        changed.add(test);
        return withPlayTests(changed);
    }

    Job withoutPlayTest(String test) {
        return withPlayTests(
                playTests.stream().filter(other -> !other.id().equals(test)).toList());
    }

    private Job withPlayTests(List<PlayTest> changed) {
        return new Job(
                id, openedAt, identity, arrival, readings, findings, decisions, stage, work, notes, photos, changed,
                keeping, chronicle);
    }

    Job with(Keeping changed) {
        return new Job(
                id, openedAt, identity, arrival, readings, findings, decisions, stage, work, notes, photos, playTests,
                changed, chronicle);
    }

    Job with(Chronicle longer) {
        return new Job(
                id, openedAt, identity, arrival, readings, findings, decisions, stage, work, notes, photos, playTests,
                keeping, longer);
    }

    /** True for what an older program never wrote down. */
    private static boolean absent(@Nullable Object part) {
        return part == null;
    }

    private static <V> Map<String, V> inOrder(Map<String, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }

    private static <V> Map<String, V> put(Map<String, V> map, String key, V value) {
        Map<String, V> changed = new LinkedHashMap<>(map);
        changed.put(key, value);
        return changed;
    }

    private static <V> Map<String, V> without(Map<String, V> map, String key) {
        Map<String, V> changed = new LinkedHashMap<>(map);
        changed.remove(key);
        return changed;
    }
}
