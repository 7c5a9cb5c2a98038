package hornwright.desk.web;

import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.TradeName;
import hornwright.desk.web.view.OnBench;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;

/** Edits in the words of the trade: ids become names, notes get their signs. */
final class Words {
    private static final Pattern ID = Pattern.compile("(?<=^|[ (])([a-z][a-z-]*(?:\\.[a-z-]+)*)(?=[:,.) ]|$)");

    private final Map<String, String> names = new HashMap<>();

    Words(Keywork keywork) {
        keywork.keys().forEach(key -> names.put(key.id(), key.name().display()));
        keywork.cups().forEach(cup -> names.put(cup.id(), keywork.nameOf(cup).display() + " cup"));
        keywork.places().forEach(place -> names.put(place.id(), place.display()));
    }

    String of(String words) {
        String named = ID.matcher(words).replaceAll(match -> {
            String id = match.group(1);
            boolean told = id.contains(".") || id.contains("-") || precededByOf(words, match.start());
            return told ? names.getOrDefault(id, id) : id;
        });
        return OnBench.capital(TradeName.withSigns(named));
    }

    /** A bare key such as "a" or "f" is a name only where an edit says of what it speaks. */
    private static boolean precededByOf(String words, int start) {
        return words.substring(0, start).endsWith(" of ");
    }
}
