package hornwright.bench.rules;

import hornwright.bench.horn.Word;

/** What stands behind a shipped default. */
public enum Mark implements Word {
    PUBLISHED("published"),
    COMMON_PRACTICE("common practice"),
    BENCH_JUDGEMENT("bench judgement"),
    FROM_MEMORY("from memory"),
    DEMO("demo"),
    /** Not shipped: a test at this shop's own bench gave it. */
    MEASURED("measured by this shop");

    private final String word;

    Mark(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
