package hornwright.desk.web;

import hornwright.desk.json.BadInput;
import hornwright.desk.json.Fault;
import hornwright.desk.web.view.OnBench;
import java.util.stream.Collectors;

/** A request that is not answered as asked: the status and one sentence that says why and what to do. */
final class Refusal extends RuntimeException {
    private final int status;

    Refusal(int status, String sentence) {
        super(sentence);
        this.status = status;
    }

    /** Everything wrong with an input, as sentences. */
    static String sentences(BadInput bad) {
        return bad.faults().stream()
                .map(Fault::what)
                .map(what -> OnBench.capital(what.endsWith(".") ? what : what + "."))
                .distinct()
                .collect(Collectors.joining(" "));
    }

    static Refusal notFound(String sentence) {
        return new Refusal(404, sentence);
    }

    int status() {
        return status;
    }

    String sentence() {
        return String.valueOf(getMessage());
    }
}
