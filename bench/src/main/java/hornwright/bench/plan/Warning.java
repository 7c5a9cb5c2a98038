package hornwright.bench.plan;

import java.util.List;

/**
 * Something about the horn as a whole that a person must know before going on.
 *
 * @param about ids of what it concerns
 */
public record Warning(Sort sort, String words, List<String> about) {
    /** What sort of thing it is. */
    public enum Sort {
        KEYWORK("another keywork"),
        KEY_FIT("key fit first"),
        LINKED_SET("linked set"),
        MIXED_HORN("mixed horn"),
        PAD_FIT("pad fit"),
        HEIGHTS("heights"),
        STOCK("stock"),
        STALE("stale");

        private final String word;

        Sort(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public Warning {
        about = List.copyOf(about);
    }
}
