package hornwright.bench.material;

import hornwright.bench.horn.Word;

/** What a figure of a material stands on; a later one outranks an earlier. */
public enum Standing implements Word {
    TYPICAL("typical, check yours"),
    SET("set by this shop"),
    MEASURED("measured by this shop");

    private final String word;

    Standing(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
