package hornwright.desk.web;

/** A request that is not answered as asked: the status and one sentence that says why and what to do. */
final class Refusal extends RuntimeException {
    private final int status;

    Refusal(int status, String sentence) {
        super(sentence);
        this.status = status;
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
