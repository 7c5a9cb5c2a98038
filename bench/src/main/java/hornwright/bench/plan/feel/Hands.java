package hornwright.bench.plan.feel;

import hornwright.bench.horn.Key;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which touches are felt against each other, and the rules that say what is usual for them. */
enum Hands {
    UPPER_STACK("Upper stack", "upper-stack", true),
    LOWER_STACK("Lower stack", "lower-stack", true),
    G_SHARP("G♯ touch", "g-sharp", false),
    LOW_TABLE("Low table", "table", false),
    LITTLE_FINGER("Right little finger", "low", false),
    SIDE("Side keys", "side", false),
    PALM("Palm keys", "palm", false),
    OCTAVE("Octave thumb", "octave", false);

    private final String title;
    private final String word;
    private final boolean evened;

    Hands(String title, String word, boolean evened) {
        this.title = title;
        this.word = word;
        this.evened = evened;
    }

    String title() {
        return title;
    }

    /** Whether its touches should ask for about the same. */
    boolean evened() {
        return evened;
    }

    String least() {
        return "touch." + word + ".least_N";
    }

    String most() {
        return "touch." + word + ".most_N";
    }

    /** Every key with a touch, under its hand; keys of no usual weight are left out. */
    static Map<Hands, List<Key>> of(Keywork keywork) {
        Map<Hands, List<Key>> all = new LinkedHashMap<>();
        for (Hands hand : values()) {
            List<Key> keys = keywork.keys().where(key -> key.touch() != null && hand.holds(keywork, key));
            if (!keys.isEmpty()) {
                all.put(hand, keys);
            }
        }
        return all;
    }

    private boolean holds(Keywork keywork, Key key) {
        return switch (this) {
            case UPPER_STACK -> key.group() == KeyGroup.UPPER_STACK;
            case LOWER_STACK -> key.group() == KeyGroup.LOWER_STACK;
            case G_SHARP ->
                key.group() == KeyGroup.G_SHARP || (key.group() == KeyGroup.TABLE && !worksBell(keywork, key));
            case LOW_TABLE ->
                key.group() == KeyGroup.BELL || (key.group() == KeyGroup.TABLE && worksBell(keywork, key));
            case LITTLE_FINGER -> key.group() == KeyGroup.LOW;
            case SIDE -> key.group() == KeyGroup.SIDE;
            case PALM -> key.group() == KeyGroup.PALM;
            case OCTAVE -> key.group() == KeyGroup.OCTAVE;
        };
    }

    private static boolean worksBell(Keywork keywork, Key key) {
        return keywork.linksFrom(key).stream()
                .map(Link::follower)
                .anyMatch(follower -> keywork.keys().get(follower).group() == KeyGroup.BELL);
    }
}
