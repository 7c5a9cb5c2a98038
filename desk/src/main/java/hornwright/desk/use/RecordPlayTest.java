package hornwright.desk.use;

import hornwright.bench.horn.Keywork;
import hornwright.bench.job.Job;
import hornwright.bench.job.PlayTestTaken;
import hornwright.bench.job.PlayTestWithdrawn;
import hornwright.bench.survey.HeardBy;
import hornwright.bench.survey.PlayTest;
import hornwright.bench.survey.PlayTest.Conditions;
import hornwright.bench.survey.PlayTest.Playing;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.Symptom;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Faults;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Keeps what was heard when the horn was played. */
public record RecordPlayTest(Shop shop) {
    /** What a player or a recording said; {@code stage} null is how far the work has come. */
    public record Heard(
            Conditions conditions,
            HeardBy heardBy,
            List<Playing> notes,
            List<String> leftOut,
            Map<String, Symptom> answers,
            @Nullable Stage stage) {}

    /** {@link BadInput} with every note this horn has not, or when nothing was heard at all. */
    public Saved record(String jobId, Form form, Heard heard) {
        Job seen = shop.opened(jobId).stateAt(form.expectedSeq()).orElseGet(() -> shop.jobNow(jobId));
        check(Keyworks.of(seen), heard);
        Stage stage = heard.stage() == null ? seen.stage() : heard.stage();
        PlayTest test = new PlayTest(
                FreshId.of("p", form),
                heard.conditions(),
                heard.heardBy(),
                heard.notes(),
                heard.leftOut(),
                heard.answers(),
                "",
                null,
                stage);
        return shop.saveJob(jobId, form, new PlayTestTaken(test));
    }

    /** Says that a play test does not count any more, and why. */
    public Saved withdraw(String jobId, Form form, String test, String why) {
        if (shop.opened(jobId).edits().stream()
                .noneMatch(posted -> posted.edit().fields().names().contains("play-test." + test))) {
            throw new BadInput("/test", "this job has no play test \"" + test + "\"", "an id of one of its play tests");
        }
        return shop.saveJob(jobId, form, new PlayTestWithdrawn(test, why));
    }

    private static void check(Keywork keywork, Heard heard) {
        Faults faults = new Faults();
        if (heard.notes().isEmpty() && heard.answers().isEmpty()) {
            faults.add("/notes", "no note was heard and nothing was said", "D4 -6, D5 +12");
        }
        Stream.concat(heard.notes().stream().map(Playing::fingering), heard.answers().keySet().stream())
                .filter(fingering -> !keywork.fingerings().contains(fingering))
                .distinct()
                .forEach(fingering -> faults.add(
                        "/notes",
                        "this horn has no fingering \"" + fingering + "\"",
                        keywork.fingerings().list().getFirst().id()));
        faults.refuseIfAny();
    }
}
