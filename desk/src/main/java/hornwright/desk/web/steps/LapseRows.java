package hornwright.desk.web.steps;

import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.measured.Lapse;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.Subject;
import hornwright.desk.web.view.OnBench;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Which readings each stage still to come would void, and which count no longer. */
public final class LapseRows {
    private final PlanInputs inputs;

    public LapseRows(PlanInputs inputs) {
        this.inputs = inputs;
    }

    /** Stages that void more than the one before; the first is what going on costs. */
    List<WorkPage.Voids> ahead() {
        List<WorkPage.Voids> rows = new ArrayList<>();
        String before = "";
        for (Stage stage : Stage.values()) {
            String words = words(Lapse.by(inputs, stage));
            if (stage.compareTo(inputs.stage()) > 0 && !words.equals(before)) {
                rows.add(new WorkPage.Voids(OnBench.capital(stage.word()), words));
                before = words;
            }
        }
        return rows;
    }

    List<String> already() {
        return Lapse.already(inputs).stream().map(LapseRows::whole).toList();
    }

    /** What saying this stage just voided, as a sentence; from the inputs as they were before it was said. */
    public static String said(PlanInputs before, Stage stage) {
        String words = words(Lapse.by(before, stage));
        return words.isEmpty() ? "No reading lapses by this stage." : "No longer counts: " + words + ".";
    }

    private static String whole(Lapse lapse) {
        return lapse.kind().subject() == Subject.HORN
                ? lapse.inWords()
                : lapse.kind().word() + ": " + String.join(", ", lapse.things());
    }

    private static String words(List<Lapse> lapses) {
        return lapses.stream().map(Lapse::inWords).collect(Collectors.joining("; "));
    }
}
