package hornwright.desk.units;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Makes typed text plain: stray spaces, invisible characters and typographic signs are forgiven, not complained of. */
final class Plain {
    private static final Pattern INVISIBLE = Pattern.compile("[\\p{Cf}\\p{Cc}]");
    private static final Pattern SPACES = Pattern.compile("[\\s\\p{Zs}]+");
    private static final Pattern VULGAR = Pattern.compile("(?<=\\d)(?=[¼½¾⅐-⅞])");

    private Plain() {}

    static String of(String raw) {
        String text = VULGAR.matcher(raw.replace('\t', ' ')).replaceAll(" ");
        text = Normalizer.normalize(text, Normalizer.Form.NFKC);
        text = SPACES.matcher(text).replaceAll(" ");
        text = INVISIBLE.matcher(text).replaceAll("");
        return text.replace('\u2212', '-')
                .replace('\u2013', '-')
                .replace('\u2010', '-')
                .replace('\u2044', '/')
                .replace('\u2215', '/')
                .replace("\u2032\u2032", "\"")
                .replace('\u201d', '"')
                .replace("''", "\"")
                .strip()
                .toLowerCase(Locale.ROOT);
    }
}
