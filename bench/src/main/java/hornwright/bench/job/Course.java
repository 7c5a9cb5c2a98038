package hornwright.bench.job;

import hornwright.bench.survey.Chronicle;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Happening;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.WorkDone;
import java.util.ArrayList;
import java.util.List;

/** The edits a signature may be older than: each changes the job and goes into its chronicle. */
final class Course {
    private Course() {}

    static Job measured(Job job, Reading fresh) {
        Job next = job.with(job.readings().taken(fresh));
        return Chronicle.keeps(fresh) ? next.with(begun(job).and(new Happening.Measured(fresh))) : next;
    }

    static Job withdrawn(Job job, String id) {
        boolean kept = job.readings().find(id).filter(Chronicle::keeps).isPresent();
        Job next = job.with(job.readings().withdrawn(id));
        return kept ? next.with(begun(job).and(new Happening.Withdrawn(id))) : next;
    }

    /** To decide the same again changes nothing, but that a contact was settled after it was felt once more counts. */
    static Job settled(Job job, Decision decision) {
        Decision before = job.decisions().get(decision.about());
        boolean same = before != null
                && before.inWords().equals(decision.inWords())
                && !(decision instanceof Decision.Contact);
        Job next = job.with(decision);
        return same || decision instanceof Decision.HandedOver
                ? next
                : next.with(begun(job).and(new Happening.Settled(decision)));
    }

    static Job dropped(Job job, String about) {
        Decision before = job.decisions().get(about);
        Job next = job.withoutDecision(about);
        return before == null || before instanceof Decision.HandedOver
                ? next
                : next.with(begun(job).and(new Happening.Dropped(about)));
    }

    static Job reached(Job job, Stage stage) {
        return job.with(stage).with(begun(job).and(new Happening.Reached(stage)));
    }

    static Job worked(Job job, WorkDone work) {
        return job.with(work).with(begun(job).and(new Happening.Worked(work)));
    }

    /** A job written before chronicles were kept: all it was decided and measured by is older than its signatures. */
    private static Chronicle begun(Job job) {
        if (!job.chronicle().equals(Chronicle.NONE)) {
            return job.chronicle();
        }
        List<Happening> old = new ArrayList<>();
        job.readings().current().stream()
                .filter(Chronicle::keeps)
                .forEach(reading -> old.add(new Happening.Measured(reading)));
        job.decisions().values().forEach(decision -> old.add(new Happening.Settled(decision)));
        if (job.stage() != Stage.ARRIVAL) {
            old.add(new Happening.Reached(job.stage()));
        }
        job.work().forEach(work -> old.add(new Happening.Worked(work)));
        return new Chronicle(old);
    }
}
