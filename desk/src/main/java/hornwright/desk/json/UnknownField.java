package hornwright.desk.json;

import java.util.Comparator;
import java.util.Set;

/** Guesses what an unknown field was meant to be: the same name with another unit, or a near spelling. */
final class UnknownField {
    private static final int NEAR = 3;

    private UnknownField() {}

    static String suggestion(String name, Set<String> known) {
        for (String candidate : known) {
            if (!candidate.equals(name) && stem(candidate).equals(stem(name)) && candidate.indexOf('_') > 0) {
                return "\"" + candidate + "\", whose unit is part of the name";
            }
        }
        return known.stream()
                .filter(candidate -> distance(candidate, name) <= NEAR)
                .min(Comparator.comparingInt(candidate -> distance(candidate, name)))
                .map(candidate -> "\"" + candidate + "\"")
                .orElse("one of " + String.join(", ", known));
    }

    private static String stem(String name) {
        int unit = name.indexOf('_');
        return unit < 0 ? name : name.substring(0, unit);
    }

    /** Levenshtein distance, by rows. */
    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int swap = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(swap, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}
