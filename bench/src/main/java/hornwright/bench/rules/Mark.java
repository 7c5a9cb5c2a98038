package hornwright.bench.rules;

/** What stands behind a shipped default. */
public enum Mark {
    PUBLISHED("published"),
    COMMON_PRACTICE("common practice"),
    BENCH_JUDGEMENT("bench judgement"),
    FROM_MEMORY("from memory"),
    DEMO("demo");

    private final String word;

    Mark(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
