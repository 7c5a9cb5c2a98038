package hornwright.desk.use;

import hornwright.bench.job.Job;
import hornwright.bench.steps.StageClock;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.Unit;
import java.time.Instant;

/** Starts and stops the clock of a stage. */
public record TurnClock(Shop shop) {
    /** Starts it; a clock that runs for another stage has to be stopped first. */
    public Saved start(String jobId, Form form, Stage stage) {
        if (clock(jobId).running() != null) {
            return new Saved.Refused("The clock runs already; stop it first.");
        }
        return new RecordReading(shop)
                .record(jobId, form, typed(ReadingKind.CLOCK_STARTED, stage, new Observed.Says("started"), null));
    }

    /** Stops it and adds the minutes since its start to its stage. */
    public Saved stop(String jobId, Form form, Instant now) {
        StageClock.Running running = clock(jobId).running();
        if (running == null) {
            return new Saved.Refused("No clock runs.");
        }
        Observed minutes = new Observed.Amount(running.minutes(now), Unit.MINUTE, 0.5);
        return new RecordReading(shop)
                .record(jobId, form, typed(ReadingKind.TIME_SPENT, running.stage(), minutes, StageClock.SERIES));
    }

    private StageClock clock(String jobId) {
        Job job = shop.jobNow(jobId);
        return StageClock.of(job.readings().current());
    }

    private static RecordReading.Typed typed(
            ReadingKind kind, Stage stage, Observed observed, @org.jspecify.annotations.Nullable String series) {
        return new RecordReading.Typed(kind, stage.word(), "", observed, "", "", null, null, series);
    }
}
