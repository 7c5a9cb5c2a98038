package hornwright.desk.web.steps;

import hornwright.desk.web.plan.LinksPage;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.State;
import java.util.List;

/** The work in its order. Question: what do I do now, and what must be looked at again? */
public record WorkPage(
        Frame frame,
        Next next,
        String horn,
        long seq,
        String said,
        List<PlacePanel.Option> uses,
        List<PlacePanel.Option> reached,
        String fresh,
        Clock clock,
        String rest,
        List<LinksPage.Settled> contacts,
        List<StepRow> now,
        List<StepRow> again,
        List<StageRow> stages,
        String voided,
        List<Voids> voids,
        List<String> lapsed) {
    public WorkPage {
        uses = List.copyOf(uses);
        reached = List.copyOf(reached);
        contacts = List.copyOf(contacts);
        now = List.copyOf(now);
        again = List.copyOf(again);
        stages = List.copyOf(stages);
        voids = List.copyOf(voids);
        lapsed = List.copyOf(lapsed);
    }

    /** A stage still to come and the readings that do not count any more once it is said. */
    public record Voids(String stage, String readings) {}

    /**
     * One step.
     *
     * @param address where it is worked out; empty when nowhere
     * @param why why it waits or is to be looked at again; what rests on it when it is good
     * @param acts what can be said of it now
     * @param key of the form, so that sending twice counts once
     */
    public record StepRow(
            String id, String words, String address, State state, String why, List<Act> acts, String key) {
        public StepRow {
            acts = List.copyOf(acts);
        }
    }

    /**
     * The clock of a stage.
     *
     * @param line "Keys fitted, running for 42 min", or what it could be started for
     */
    public record Clock(String line, String stage, boolean running) {}

    /** A button: the word that is sent, and what stands on it. */
    public record Act(String word, String label, boolean first) {}

    /** One stage and how much of it is done. */
    public record StageRow(String name, String fact, List<StepRow> steps) {
        public StageRow {
            steps = List.copyOf(steps);
        }
    }
}
