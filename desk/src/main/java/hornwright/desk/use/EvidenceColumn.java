package hornwright.desk.use;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What a table of evidence can tell, and by which names its columns are known. */
public enum EvidenceColumn {
    MAKER("maker", "whose horns", false, "Tarrant & Loe", "make", "brand"),
    SERIAL("serial", "the horn's number", true, "41630", "serial number", "serial no", "number"),
    VOICE("voice", "alto, tenor, …", true, "alto", "instrument", "type"),
    MODEL("model", "as the maker called it", false, "first model"),
    BUILT("built", "year, also 1925~ or 192X", false, "1925~", "year", "date", "made"),
    INTEGRITY("integrity", "of the whole horn", false, "original", "state"),
    PLACE("place", "where on the horn", true, "foot.d", "spot", "location"),
    MATERIAL("material", "what was there; none for bare", true, "natural cork", "found"),
    COLOUR("colour", "in words", false, "light brown", "color"),
    THICKNESS("thickness_mm", "at least, in mm", false, "1.9", "thickness", "thickness mm", "mm"),
    ADHESIVE("adhesive", "what held it", false, "shellac", "glue"),
    METHOD("method", "seen, measured, analysed", false, "measured", "how"),
    UNALTERED("unaltered", "yes when nobody can have renewed it", false, "yes", "original part"),
    HAND("hand", "first or second hand", false, "first hand"),
    ORIGIN("origin", "what makes looks depend on one another", false, "horn 41630", "group", "source"),
    INTEREST("interest", "what the teller may gain", false, "neutral"),
    CITATION("citation", "where it is written down", false, "bench book 12, page 4", "reference", "cited");

    private final String word;
    private final String meaning;
    private final boolean needed;
    private final String example;
    private final List<String> names;

    EvidenceColumn(String word, String meaning, boolean needed, String example, String... names) {
        this.word = word;
        this.meaning = meaning;
        this.needed = needed;
        this.example = example;
        this.names = List.of(names);
    }

    public String word() {
        return word;
    }

    public String meaning() {
        return meaning;
    }

    /** Whether a look cannot be understood without it. */
    public boolean isNeeded() {
        return needed;
    }

    public String example() {
        return example;
    }

    /** Whether a column of that name most probably is this one. */
    boolean isCalled(String head) {
        String plain = head.toLowerCase(Locale.ROOT).replaceAll("[^a-z_]+", " ").strip();
        return plain.equals(word)
                || names.contains(plain)
                || plain.replace(' ', '_').equals(word);
    }

    static Stream<EvidenceColumn> needed() {
        return Stream.of(values()).filter(EvidenceColumn::isNeeded);
    }
}
