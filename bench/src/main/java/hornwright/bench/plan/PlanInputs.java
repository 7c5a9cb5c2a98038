package hornwright.bench.plan;

import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.horn.Keywork;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.stock.Stock;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Chronicle;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.GroupFinding;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.WorkDone;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Everything the plan is made from; nothing else influences it.
 *
 * @param serial null when nobody has read it
 * @param agreed what the horn is for; null while that is not settled, which is planned as a working instrument
 * @param stage how far the work has come
 * @param chronicle in which order it was decided, measured, worked on and signed off, as far as that is known
 * @param asBuilt by place, from the archive at this serial; empty when there is no archive
 */
public record PlanInputs(
        Keywork keywork,
        @Nullable Long serial,
        @Nullable AgreedUse agreed,
        Stage stage,
        List<Reading> readings,
        List<Finding> findings,
        List<GroupFinding> groupFindings,
        List<Decision> decisions,
        List<WorkDone> workDone,
        Chronicle chronicle,
        Map<String, AsBuiltAt> asBuilt,
        Stock stock,
        ShopRules rules) {
    public PlanInputs {
        readings = List.copyOf(readings);
        findings = List.copyOf(findings);
        groupFindings = List.copyOf(groupFindings);
        decisions = List.copyOf(decisions);
        workDone = List.copyOf(workDone);
        asBuilt = Collections.unmodifiableMap(new LinkedHashMap<>(asBuilt));
    }

    /** A horn nobody has measured yet, in a shop with nothing on its shelf and the rules as they come. */
    public static PlanInputs of(Keywork keywork) {
        return new PlanInputs(
                keywork,
                null,
                null,
                Stage.ARRIVAL,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Chronicle.NONE,
                Map.of(),
                Stock.empty(),
                ShopRules.shipped());
    }

    /** What the horn is for: the last decision about it, else what was agreed, else a working instrument. */
    public AgreedUse use() {
        AgreedUse use = agreed == null ? AgreedUse.WORKING : agreed;
        for (Decision decision : decisions) {
            if (decision instanceof Decision.Use decided) {
                use = decided.use();
            }
        }
        return use;
    }

    /** Whether somebody settled what the horn is for. */
    public boolean useIsAgreed() {
        return agreed != null || decisions.stream().anyMatch(Decision.Use.class::isInstance);
    }

    public PlanInputs withReadings(List<Reading> other) {
        return new PlanInputs(
                keywork,
                serial,
                agreed,
                stage,
                other,
                findings,
                groupFindings,
                decisions,
                workDone,
                chronicle,
                asBuilt,
                stock,
                rules);
    }

    public PlanInputs withFindings(List<Finding> other) {
        return new PlanInputs(
                keywork,
                serial,
                agreed,
                stage,
                readings,
                other,
                groupFindings,
                decisions,
                workDone,
                chronicle,
                asBuilt,
                stock,
                rules);
    }

    public PlanInputs withDecisions(List<Decision> other) {
        return new PlanInputs(
                keywork,
                serial,
                agreed,
                stage,
                readings,
                findings,
                groupFindings,
                other,
                workDone,
                chronicle,
                asBuilt,
                stock,
                rules);
    }

    public PlanInputs withWorkDone(List<WorkDone> other) {
        return new PlanInputs(
                keywork,
                serial,
                agreed,
                stage,
                readings,
                findings,
                groupFindings,
                decisions,
                other,
                chronicle,
                asBuilt,
                stock,
                rules);
    }

    public PlanInputs withChronicle(Chronicle other) {
        return new PlanInputs(
                keywork,
                serial,
                agreed,
                stage,
                readings,
                findings,
                groupFindings,
                decisions,
                workDone,
                other,
                asBuilt,
                stock,
                rules);
    }

    public PlanInputs withStock(Stock other) {
        return new PlanInputs(
                keywork,
                serial,
                agreed,
                stage,
                readings,
                findings,
                groupFindings,
                decisions,
                workDone,
                chronicle,
                asBuilt,
                other,
                rules);
    }

    public PlanInputs at(Stage other) {
        return new PlanInputs(
                keywork,
                serial,
                agreed,
                other,
                readings,
                findings,
                groupFindings,
                decisions,
                workDone,
                chronicle,
                asBuilt,
                stock,
                rules);
    }

    public PlanInputs withRules(ShopRules other) {
        return new PlanInputs(
                keywork,
                serial,
                agreed,
                stage,
                readings,
                findings,
                groupFindings,
                decisions,
                workDone,
                chronicle,
                asBuilt,
                stock,
                other);
    }
}
