package hornwright.engines.uncertainty;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A formula of named inputs: + - * / ^ ( ), sqrt exp log sin cos tan abs min max pi; angles in radians. */
public final class Model {
    private static final Set<String> TAKEN =
            Set.of("sqrt", "exp", "log", "sin", "cos", "tan", "abs", "min", "max", "pi");

    private final Expression expression;
    private final int inputs;

    private Model(Expression expression, int inputs) {
        this.expression = expression;
        this.inputs = inputs;
    }

    /** Reads a formula over these ids, each once and {@linkplain #mayBeId fit}; {@link ModelFault} if it cannot. */
    public static Model of(String text, List<String> ids) {
        if (new HashSet<>(ids).size() < ids.size() || !ids.stream().allMatch(Model::mayBeId)) {
            throw new IllegalArgumentException("ids are letters, digits and _, start with a letter, and stand once");
        }
        return new Model(Parser.parse(text, ids), ids.size());
    }

    /** Whether a formula could name an input so: letters, digits and _, a letter first, and no function's name. */
    public static boolean mayBeId(String id) {
        return !TAKEN.contains(id)
                && id.codePoints().allMatch(c -> Character.isLetter(c) || Character.isDigit(c) || c == '_')
                && !id.isEmpty()
                && !Character.isDigit(id.charAt(0));
    }

    int inputs() {
        return inputs;
    }

    double[] many(double[][] draws, int count) {
        return expression.many(draws, count);
    }

    Dual once(double[] values) {
        return expression.once(values);
    }
}
