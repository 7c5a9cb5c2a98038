package hornwright.desk.use;

import hornwright.bench.job.Job;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.Planner;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PlayTest;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The plan of a job as everything stands now. One plan a job is remembered, made
 * again when its inputs change, and made once however many ask for it at a time.
 */
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
        return last.compute(
                        job.id(),
                        (id, made) -> made != null && made.inputs().equals(inputs)
                                ? made
                                : new Made(inputs, Planner.plan(inputs)))
                .plan();
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
        readings.addAll(played(job));
        return readings;
    }

    /** A play test is a reading of the tuning: for the plan, the middle one of its notes. */
    private static List<Reading> played(Job job) {
        return job.playTests().stream()
                .filter(test -> !test.notes().isEmpty())
                .map(test -> {
                    double[] cents = test.notes().stream()
                            .mapToDouble(PlayTest.Playing::cents)
                            .sorted()
                            .toArray();
                    Observed middle = new Observed.Amount(cents[cents.length / 2], Unit.CENTS, null);
                    return new Reading(
                            test.id(),
                            ReadingKind.TUNING,
                            "horn",
                            "",
                            middle,
                            test.heardBy().word(),
                            "",
                            test.who(),
                            test.when(),
                            test.stage(),
                            null);
                })
                .toList();
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
                job.chronicle(),
                asBuilt.of(job.identity()),
                shop.stock().state(),
                shop.house().state().measuredRules());
    }
}
