package hornwright.desk.use;

import hornwright.bench.job.Job;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.Planner;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The plan of a job as everything stands now. One plan a job is remembered, and made again when its inputs change. */
public final class ProposePlan {
    private record Made(PlanInputs inputs, Plan plan) {}

    private final Shop shop;
    private final AsBuiltMemory asBuilt;
    private final Map<String, Made> last = new ConcurrentHashMap<>();

    public ProposePlan(Shop shop) {
        this.shop = shop;
        this.asBuilt = new AsBuiltMemory(shop);
    }

    public Plan of(Job job) {
        PlanInputs inputs = inputs(job);
        Made made = last.get(job.id());
        if (made != null && made.inputs().equals(inputs)) {
            return made.plan();
        }
        Plan plan = Planner.plan(inputs);
        last.put(job.id(), new Made(inputs, plan));
        return plan;
    }

    /** What the plan would be with one more reading; nothing is kept or remembered. */
    public Plan ifRead(Job job, Reading reading) {
        List<Reading> readings = new ArrayList<>(measured(job));
        readings.removeIf(other -> other.kind() == reading.kind()
                && other.of().equals(reading.of())
                && other.point().equals(reading.point())
                && other.stage() == reading.stage());
        readings.add(reading);
        return Planner.plan(inputs(job).withReadings(readings));
    }

    /** What counts now, after the heights that were taken before strip-down and have been measured again since. */
    private static List<Reading> measured(Job job) {
        List<Reading> readings = new ArrayList<>(job.readings().former().stream()
                .filter(reading -> reading.kind() == ReadingKind.FRONT_HEIGHT && reading.stage() == Stage.ARRIVAL)
                .toList());
        readings.addAll(job.readings().current());
        return readings;
    }

    /** That it was handed over changes nothing of what is planned. */
    private static List<Decision> settled(Job job) {
        return job.decisions().values().stream()
                .filter(decision -> !(decision instanceof Decision.HandedOver))
                .toList();
    }

    public PlanInputs inputs(Job job) {
        return new PlanInputs(
                Keyworks.of(job),
                job.identity().serial(),
                job.agreedUse().orElse(null),
                job.stage(),
                measured(job),
                job.findings().places(),
                job.findings().groups(),
                settled(job),
                job.work(),
                asBuilt.of(job.identity()),
                shop.stock().state(),
                shop.house().state().rules());
    }
}
