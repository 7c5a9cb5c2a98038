package hornwright.desk.web.page;

import hornwright.desk.json.BadInput;
import hornwright.desk.json.Fault;
import hornwright.desk.web.view.OnBench;
import java.util.stream.Collectors;

/** A request that is not answered as asked: the status and one sentence that says why and what to do. */
public final class Refusal extends RuntimeException {
    private final int status;

    public Refusal(int status, String sentence) {
        super(sentence);
        this.status = status;
    }

    /** Everything wrong with an input, as sentences. */
    public static String sentences(BadInput bad) {
        return bad.faults().stream()
                .map(Fault::what)
                .map(what -> OnBench.capital(what.endsWith(".") ? what : what + "."))
                .distinct()
                .collect(Collectors.joining(" "));
    }

    public static Refusal notFound(String sentence) {
        return new Refusal(404, sentence);
    }

    public int status() {
        return status;
    }

    public String sentence() {
        return String.valueOf(getMessage());
    }
}
