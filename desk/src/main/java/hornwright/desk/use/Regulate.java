package hornwright.desk.use;

import hornwright.bench.job.Decided;
import hornwright.bench.job.DecisionDropped;
import hornwright.bench.job.JobEdit;
import hornwright.bench.job.WorkRecorded;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.WorkDone;
import hornwright.bench.survey.WorkKind;
import java.util.ArrayList;
import java.util.List;

/** Settles what is done at contacts, and says when it is done. */
public record Regulate(Shop shop) {
    /** The proposal becomes the work; each contact is an edit of its own, so that one of them can be taken back. */
    public Saved accept(String jobId, Form form, List<Decision.Contact> contacts) {
        List<JobEdit> edits = new ArrayList<>();
        contacts.forEach(contact -> edits.add(new Decided(contact)));
        return all(jobId, form, edits);
    }

    /** What was settled at a contact is done: the readings it rested on are over, and so is the decision. */
    public Saved done(String jobId, Form form, Decision.Contact contact) {
        String step = "regulate." + contact.link().replaceFirst("^link\\.", "");
        return all(
                jobId,
                form,
                List.of(
                        new WorkRecorded(
                                new WorkDone(FreshId.of("w", form), WorkKind.LINK_CHANGED, contact.link(), null)),
                        new DecisionDropped(contact.about()),
                        new WorkRecorded(new WorkDone(FreshId.of("s", form), WorkKind.SIGNED_OFF, step, null))));
    }

    /** What was settled at a contact is given up; nothing was done to it. */
    public Saved drop(String jobId, Form form, Decision.Contact contact) {
        return all(jobId, form, List.of(new DecisionDropped(contact.about())));
    }

    /** One after another; the last answer, or the first that is no keeping. */
    private Saved all(String jobId, Form form, List<JobEdit> edits) {
        Saved saved = shop.saveJob(jobId, form, edits.getFirst());
        for (int i = 1; i < edits.size() && saved instanceof Saved.Kept; i++) {
            Form next = new Form(form.expectedSeq() + i, form.hand(), form.key() + "-" + i);
            saved = shop.saveJob(jobId, next, edits.get(i));
        }
        return saved;
    }
}
