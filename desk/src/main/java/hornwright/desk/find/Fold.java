package hornwright.desk.find;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Takes words apart so that "G♯", "g sharp" and "g#" are one word, and "Müller" is found by "muller". */
final class Fold {
    private static final Pattern FLAT = Pattern.compile("\\b([a-g])[ -]?flat\\b");
    private static final Pattern SHARP = Pattern.compile("\\b([a-g])[ -]?sharp\\b");
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}#]+");

    private Fold() {}

    static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        for (String word : BETWEEN.split(plain(text))) {
            if (!word.isEmpty()) {
                words.add(word);
            }
        }
        return words;
    }

    private static String plain(String text) {
        String signs = text.replace('♭', 'b')
                .replace('♯', '#')
                .replace("ß", "ss")
                .replace("ø", "o")
                .replace("æ", "ae");
        String apart =
                MARKS.matcher(Normalizer.normalize(signs, Normalizer.Form.NFKD)).replaceAll("");
        String small = apart.toLowerCase(Locale.ROOT);
        return SHARP.matcher(FLAT.matcher(small).replaceAll("$1b")).replaceAll("$1#");
    }
}
