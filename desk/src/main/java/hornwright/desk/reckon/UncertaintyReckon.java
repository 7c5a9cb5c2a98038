package hornwright.desk.reckon;

import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;
import hornwright.engines.uncertainty.InputQuantity;
import hornwright.engines.uncertainty.Interval;
import hornwright.engines.uncertainty.Model;
import hornwright.engines.uncertainty.ModelFault;
import hornwright.engines.uncertainty.Shape;
import hornwright.engines.uncertainty.Uncertainty;
import hornwright.engines.uncertainty.UncertaintyAnswer;
import hornwright.engines.uncertainty.UncertaintyAnswer.Drawn;
import hornwright.engines.uncertainty.UncertaintyQuestion;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** {@code reckon uncertainty}. */
final class UncertaintyReckon implements Engine {
    private static final double LARGEST_SEED = 1L << 53;
    private static final int MOST_DRAWS = 50_000_000;
    private static final Map<String, Shape> SHAPES = shapes();

    private static Map<String, Shape> shapes() {
        Map<String, Shape> words = new LinkedHashMap<>();
        for (Shape shape : Shape.values()) {
            words.put(shape.name().toLowerCase(Locale.ROOT), shape);
        }
        return words;
    }

    @Override
    public String name() {
        return "uncertainty";
    }

    @Override
    public String question() {
        return "what the inputs' uncertainty does to a result";
    }

    @Override
    public Reckoning read(Fields in) {
        List<InputQuantity> inputs = in.someOf("inputs", UncertaintyReckon::input);
        List<String> ids = inputs.stream().map(InputQuantity::id).toList();
        in.uniqueIds("inputs", ids);
        Model model = model(in, ids);
        int draws = in.wholeOr("draws", 1_000_000, Bound.COUNT, "1000000");
        if (draws < 2 || draws > MOST_DRAWS) {
            in.fault("draws", draws + " must be between 2 and " + MOST_DRAWS, "\"draws\": 1000000");
        }
        double seed = in.numberOr("seed", 1, Bound.WHOLE, "1");
        if (Math.abs(seed) > LARGEST_SEED) {
            in.fault("seed", seed + " is too large to be told exactly", "\"seed\": 1");
        }
        double coverage = in.numberOr("coverage", 0.95, Bound.INSIDE_SHARE, "0.95");
        return () -> answer(Uncertainty.of(new UncertaintyQuestion(
                inputs, java.util.Objects.requireNonNull(model), draws, (long) seed, coverage)));
    }

    private static InputQuantity input(Fields in) {
        String id = in.text("id", "x");
        if (in.has("id") && !Model.mayBeId(id)) {
            in.fault("id", "\"" + id + "\" cannot be named in a model", "letters, digits and _, a letter first");
        }
        double value = in.number("value", Bound.ANY, "1");
        double u = in.number("u", Bound.NOT_NEGATIVE, "0.1");
        Shape shape = in.choice("shape", SHAPES);
        Double given = in.numberIfAny("dof", Bound.POSITIVE, "18");
        double dof = given == null ? Double.POSITIVE_INFINITY : given;
        if (dof < 1) {
            in.fault("dof", dof + " must be 1 or more", "\"dof\": 18");
            return new InputQuantity(id, value, u, Shape.NORMAL, 1);
        }
        if (shape == Shape.STUDENT && !(dof > 2 && given != null)) {
            in.fault(
                    "dof", "Student's shape has a standard uncertainty only above 2 degrees of freedom", "\"dof\": 18");
            return new InputQuantity(id, value, u, Shape.NORMAL, dof);
        }
        return new InputQuantity(id, value, u, shape, dof);
    }

    /** The model, or null after a fault. */
    private static @Nullable Model model(Fields in, List<String> ids) {
        String text = in.text("model", "x + y*z");
        List<String> usable = ids.stream().filter(Model::mayBeId).distinct().toList();
        if (!in.has("model") || usable.size() < ids.size() || ids.isEmpty()) {
            return null;
        }
        try {
            return Model.of(text, ids);
        } catch (ModelFault fault) {
            in.fault("model", String.valueOf(fault.getMessage()), fault.example());
            return null;
        }
    }

    private static Answer answer(UncertaintyAnswer answer) {
        Drawn drawn = answer.drawn();
        double[] contributions =
                answer.contributions().stream().mapToDouble(Double::doubleValue).toArray();
        Out drawing = Out.object()
                .put("value", drawn.value())
                .put("u", drawn.u())
                .put("interval", limits(drawn.interval()))
                .put("shortest", limits(drawn.shortest()));
        if (drawn.notFiniteShare() > 0) {
            drawing.put("not_finite_share", drawn.notFiniteShare());
        }
        Out out = Out.object()
                .put("value", answer.value())
                .put("u", answer.u())
                .put("dof", answer.dof())
                .put("interval", limits(answer.interval()))
                .put("contributions", contributions)
                .put("montecarlo", drawing);
        if (drawn.notFiniteShare() > 0) {
            return Answer.falling(out, "a share of " + drawn.notFiniteShare() + " of the draws is not finite");
        }
        return answer.isFinite()
                ? Answer.of(out)
                : Answer.falling(out, "the model or its slope is not finite at the estimates");
    }

    private static double[] limits(Interval interval) {
        return new double[] {interval.low(), interval.high()};
    }
}
