package hornwright.bench.horn;

import java.util.List;
import java.util.regex.Pattern;

/**
 * A name as the trade says it, with the other names in use. Kept in plain letters ("low Bb"), shown with signs
 * ("low B♭").
 */
public record TradeName(String plain, List<String> aliases) {
    private static final Pattern FLAT = Pattern.compile("\\b([A-G])b\\b");

    public TradeName {
        aliases = List.copyOf(aliases);
    }

    public static TradeName of(String plain, String... aliases) {
        return new TradeName(plain, List.of(aliases));
    }

    /** The name for screen and paper. */
    public String display() {
        return withSigns(plain);
    }

    public List<String> displayAliases() {
        return aliases.stream().map(TradeName::withSigns).toList();
    }

    /** Whether somebody who says this means the same thing; letter case does not matter. */
    public boolean answersTo(String said) {
        String wanted = withSigns(said.strip());
        return display().equalsIgnoreCase(wanted) || displayAliases().stream().anyMatch(wanted::equalsIgnoreCase);
    }

    /** Note names with flat and sharp signs in place of b and #. */
    public static String withSigns(String text) {
        return FLAT.matcher(text).replaceAll("$1♭").replace('#', '♯');
    }
}
