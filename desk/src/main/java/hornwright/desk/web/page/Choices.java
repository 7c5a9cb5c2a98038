package hornwright.desk.web.page;

import java.util.Arrays;

/** Reads a choice of a form by its fixed word. */
public final class Choices {
    private Choices() {}

    public static <E extends Enum<E>> E of(Class<E> type, String word, E otherwise) {
        return Arrays.stream(type.getEnumConstants())
                .filter(value -> value.name().equals(word))
                .findFirst()
                .orElse(otherwise);
    }
}
