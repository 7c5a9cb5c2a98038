package hornwright.bench.archive;

/** Where, when and for what somebody looked. Without it "nothing found" says nothing. */
public record SearchLog(String where, Edtf when, String terms) {
    public SearchLog {
        if (where.isBlank() || terms.isBlank()) {
            throw new IllegalArgumentException("a search log says where and for what was looked");
        }
    }
}
