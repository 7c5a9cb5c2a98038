package hornwright.desk.web;

import java.util.Arrays;

/** Reads a choice of a form by its fixed word. */
final class Choices {
    private Choices() {}

    static <E extends Enum<E>> E of(Class<E> type, String word, E otherwise) {
        return Arrays.stream(type.getEnumConstants())
                .filter(value -> value.name().equals(word))
                .findFirst()
                .orElse(otherwise);
    }
}
