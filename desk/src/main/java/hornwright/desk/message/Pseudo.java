package hornwright.desk.message;

import java.util.regex.Pattern;

/**
 * Makes a text strange but readable: letters with accents, two fifths longer, in brackets, its parts untouched. So long
 * as German and Finnish are, common practice.
 */
final class Pseudo {
    private static final String PLAIN = "abcdeghijklnorstuyzACEILNOSUZ";
    private static final String ACCENTED = "åƀçđéĝĥíĵķļñöŕšŧüýžÅÇÉÍĻÑÖŠÜŽ";
    private static final Pattern PART = Pattern.compile("\\{\\d}");
    private static final double LONGER = 0.4;
    private static final int WORD = 6;

    private Pseudo() {}

    static String of(String text) {
        StringBuilder strange = new StringBuilder("[");
        int from = 0;
        for (var part :
                (Iterable<java.util.regex.MatchResult>) PART.matcher(text).results()::iterator) {
            accent(text.substring(from, part.start()), strange);
            strange.append(part.group());
            from = part.end();
        }
        accent(text.substring(from), strange);
        lengthen(strange, (int) Math.ceil(LONGER * text.length()));
        return strange.append(']').toString();
    }

    private static void accent(String text, StringBuilder strange) {
        text.chars().forEach(letter -> {
            int at = PLAIN.indexOf(letter);
            strange.append(at < 0 ? (char) letter : ACCENTED.charAt(at));
        });
    }

    /** As further words, or as the end of a short one, since languages do both. */
    private static void lengthen(StringBuilder strange, int letters) {
        for (int at = 0; at < letters; at++) {
            strange.append(letters >= WORD && at % WORD == 0 ? ' ' : 'ñ');
        }
    }
}
