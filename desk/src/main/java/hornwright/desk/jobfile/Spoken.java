package hornwright.desk.jobfile;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/** The words a closed choice is written with, in the order they are declared. */
final class Spoken {
    private Spoken() {}

    static <E> Map<String, E> of(E[] choices, Function<E, String> word) {
        Map<String, E> words = new LinkedHashMap<>();
        for (E one : choices) {
            words.put(word.apply(one), one);
        }
        return words;
    }
}
