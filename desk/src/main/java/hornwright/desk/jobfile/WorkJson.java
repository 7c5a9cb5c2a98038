package hornwright.desk.jobfile;

import hornwright.bench.survey.WorkDone;
import hornwright.bench.survey.WorkKind;
import hornwright.desk.json.Fields;

/** Work already done, in its order. */
final class WorkJson {
    private WorkJson() {}

    static WorkDone read(Fields f) {
        return new WorkDone(
                f.text("id", "w.001"),
                f.choice("kind", Spoken.of(WorkKind.values(), WorkKind::word)),
                f.text("of", "f-sharp"),
                ReadingJson.instant(f));
    }
}
