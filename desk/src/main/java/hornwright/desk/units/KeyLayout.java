package hornwright.desk.units;

import java.util.Locale;
import java.util.Map;

/**
 * What a typing instrument becomes on its way through the computer. It sends the positions of keys as on an American
 * keyboard; the computer turns them into the letters of its own layout. Source: positions from USB HID Usage Tables 1.5,
 * page 7; the letters of each layout from memory.
 */
public enum KeyLayout {
    US("American", Map.of()),
    UK("British", Map.of()),
    DE("German", Map.of('ß', '-', '´', '+', 'z', 'y', 'y', 'z')),
    FR(
            "French",
            Map.ofEntries(
                    Map.entry('à', '0'),
                    Map.entry('&', '1'),
                    Map.entry('é', '2'),
                    Map.entry('"', '3'),
                    Map.entry('\'', '4'),
                    Map.entry('(', '5'),
                    Map.entry('-', '6'),
                    Map.entry('è', '7'),
                    Map.entry('_', '8'),
                    Map.entry('ç', '9'),
                    Map.entry(':', '.'),
                    Map.entry(';', ','),
                    Map.entry(')', '-'),
                    Map.entry(',', 'm'),
                    Map.entry('?', 'm'),
                    Map.entry('=', '+'))),
    CH("Swiss", Map.of('\'', '-', '^', '+', 'z', 'y', 'y', 'z')),
    ES("Spanish", Map.of('\'', '-', '¡', '+'));

    private final String word;
    private final Map<Character, Character> sent;

    KeyLayout(String word, Map<Character, Character> sent) {
        this.word = word;
        this.sent = sent;
    }

    public String word() {
        return word;
    }

    /** What the instrument meant by what arrived. */
    String meant(String arrived) {
        StringBuilder meant = new StringBuilder();
        String small = arrived.toLowerCase(Locale.ROOT);
        for (int i = 0; i < small.length(); i++) {
            char letter = small.charAt(i);
            meant.append(sent.getOrDefault(letter, letter).charValue());
        }
        return meant.toString();
    }

    /** What arrives when the instrument means that; the inverse of {@link #meant} as far as there is one. */
    public String arriving(String meant) {
        StringBuilder arrived = new StringBuilder();
        for (int i = 0; i < meant.length(); i++) {
            char letter = meant.charAt(i);
            arrived.append(sent.entrySet().stream()
                    .filter(entry -> entry.getValue() == letter && entry.getKey() != '?')
                    .map(Map.Entry::getKey)
                    .findFirst()
                    .orElse(letter));
        }
        return arrived.toString();
    }
}
