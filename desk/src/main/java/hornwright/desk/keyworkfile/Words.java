package hornwright.desk.keyworkfile;

import hornwright.bench.horn.Word;
import java.util.LinkedHashMap;
import java.util.Map;

/** The words a closed choice is written with, in the order they are declared. */
public final class Words {
    private Words() {}

    public static <E extends Enum<E> & Word> Map<String, E> of(Class<E> choice) {
        Map<String, E> words = new LinkedHashMap<>();
        for (E one : choice.getEnumConstants()) {
            words.put(one.word(), one);
        }
        return words;
    }
}
