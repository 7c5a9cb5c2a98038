package hornwright.desk.jobfile;

import hornwright.bench.plan.Because;
import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.PlannedNumber;
import hornwright.desk.json.Out;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Numbers and becauses. Values are rounded to a millionth of their unit, far below anything measured. */
final class NumberJson {
    private static final double MILLION = 1e6;

    private final Becauses becauses;

    NumberJson(Becauses becauses) {
        this.becauses = becauses;
    }

    /** The number with its first because; deeper ones stand in the table under their ids. */
    @Nullable
    Out write(@Nullable PlannedNumber number) {
        if (number == null) {
            return null;
        }
        Out out = Out.object()
                .put("value", round(number.value()))
                .put("unit", number.unit())
                .put("u", round(number.u()));
        if (number.low() != null && number.high() != null) {
            out.put("low", round(number.low())).put("high", round(number.high()));
        }
        if (number.at() != null) {
            out.put("at", number.at().word());
        }
        Out because = Out.object().put("id", number.because());
        return out.put("because", describe(because, becauses.get(number.because())));
    }

    /** Every because by its id. */
    Out table() {
        Out table = Out.object();
        becauses.byId().forEach((id, because) -> table.put(id, describe(Out.object(), because)));
        return table;
    }

    private Out describe(Out out, Because because) {
        return out.put("rule", because.rule())
                .put("inputs", inputs(because))
                .put("source", because instanceof Because.Leaf leaf ? leaf.kind() : becauses.source(because.id()));
    }

    private static List<Out> inputs(Because because) {
        return because.inputs().stream()
                .map(input -> Out.object()
                        .put("name", input.name())
                        .put("value", round(input.value()))
                        .put("unit", input.unit())
                        .put("u", round(input.u()))
                        .put("because", input.because()))
                .toList();
    }

    private static double round(double value) {
        return Math.round(value * MILLION) / MILLION;
    }
}
