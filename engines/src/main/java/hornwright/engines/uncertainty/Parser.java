package hornwright.engines.uncertainty;

import hornwright.engines.uncertainty.Expression.Both;
import hornwright.engines.uncertainty.Expression.Call;
import hornwright.engines.uncertainty.Expression.Constant;
import hornwright.engines.uncertainty.Expression.Input;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads a model by recursive descent.
 *
 * <pre>
 * sum   = product { (+ | -) product }
 * product = signed { (* | /) signed }
 * signed  = - signed | power
 * power   = atom [ ^ signed ]              to the right; -x^2 is -(x^2)
 * atom    = number | pi | input | function ( sum ) | (min | max) ( sum { , sum } ) | ( sum )
 * </pre>
 */
final class Parser {
    private static final int DEEPEST = 200;
    private static final String EXAMPLE = "\"depth + 2*gap - sqrt(x)\"";

    private final String text;
    private final List<String> ids;
    private int at;
    private int depth;

    private Parser(String text, List<String> ids) {
        this.text = text;
        this.ids = ids;
    }

    static Expression parse(String text, List<String> ids) {
        Parser parser = new Parser(text, ids);
        Expression whole = parser.sum();
        if (parser.peek() != 0) {
            throw parser.fault("\"" + parser.text.charAt(parser.at) + "\" does not belong here");
        }
        return whole;
    }

    private Expression sum() {
        if (++depth > DEEPEST) {
            throw fault("brackets are nested too deep");
        }
        Expression left = product();
        while (peek() == '+' || peek() == '-') {
            Operation operation = text.charAt(at++) == '+' ? Operation.PLUS : Operation.MINUS;
            left = new Both(operation, left, product());
        }
        depth--;
        return left;
    }

    private Expression product() {
        Expression left = signed();
        while (peek() == '*' || peek() == '/') {
            Operation operation = text.charAt(at++) == '*' ? Operation.TIMES : Operation.OVER;
            left = new Both(operation, left, signed());
        }
        return left;
    }

    private Expression signed() {
        if (peek() == '-') {
            at++;
            if (++depth > DEEPEST) {
                throw fault("there are too many signs in a row");
            }
            Expression of = signed();
            depth--;
            return new Call(Function.NEGATE, of);
        }
        Expression base = atom();
        if (peek() != '^') {
            return base;
        }
        at++;
        if (++depth > DEEPEST) {
            throw fault("there are too many powers in a row");
        }
        Expression exponent = signed();
        depth--;
        return new Both(Operation.POWER, base, exponent);
    }

    private Expression atom() {
        char next = peek();
        if (next == '(') {
            at++;
            Expression inside = sum();
            expect(')');
            return inside;
        }
        if (Character.isDigit(next) || next == '.') {
            return number();
        }
        if (isLetter(next)) {
            return named();
        }
        throw fault(next == 0 ? "the model ends where a value is due" : "a value is due, not \"" + next + "\"");
    }

    private Expression number() {
        int from = at;
        digits();
        if (at < text.length() && text.charAt(at) == '.') {
            at++;
            digits();
        }
        int mark = at;
        if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
            at++;
            if (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
                at++;
            }
            int first = at;
            digits();
            at = at == first ? mark : at;
        }
        try {
            return new Constant(Double.parseDouble(text.substring(from, at)));
        } catch (NumberFormatException none) {
            at = from;
            throw fault("this is no number");
        }
    }

    private void digits() {
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
    }

    private Expression named() {
        int from = at;
        while (at < text.length() && (isLetter(text.charAt(at)) || Character.isDigit(text.charAt(at)))) {
            at++;
        }
        String name = text.substring(from, at);
        int input = ids.indexOf(name);
        if (input >= 0) {
            return new Input(input);
        }
        if (name.equals("pi")) {
            return new Constant(Math.PI);
        }
        for (Operation operation : List.of(Operation.MIN, Operation.MAX)) {
            if (name.equals(operation.word)) {
                return Expression.chain(operation, arguments());
            }
        }
        for (Function function : Function.values()) {
            if (name.equals(function.word)) {
                return called(function, from);
            }
        }
        at = from;
        throw new ModelFault(from, "\"" + name + "\" is neither an input nor a function", "one of " + ids);
    }

    private Expression called(Function function, int from) {
        List<Expression> arguments = arguments();
        if (arguments.size() != 1) {
            throw new ModelFault(from, function.word + " takes one value", "\"" + function.word + "(x)\"");
        }
        return new Call(function, arguments.getFirst());
    }

    private List<Expression> arguments() {
        expect('(');
        List<Expression> all = new ArrayList<>();
        all.add(sum());
        while (peek() == ',') {
            at++;
            all.add(sum());
        }
        expect(')');
        return all;
    }

    private void expect(char wanted) {
        if (peek() != wanted) {
            throw fault("\"" + wanted + "\" is due");
        }
        at++;
    }

    /** The next character that is no space; 0 at the end. */
    private char peek() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        return at < text.length() ? text.charAt(at) : 0;
    }

    private static boolean isLetter(char c) {
        return Character.isLetter(c) || c == '_';
    }

    private ModelFault fault(String what) {
        return new ModelFault(Math.min(at, text.length()), what, EXAMPLE);
    }
}
