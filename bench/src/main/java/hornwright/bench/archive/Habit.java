package hornwright.bench.archive;

import hornwright.engines.belief.WorkshopAnswer.Spell;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A time in which the works truly put in more than one material side by side; not the same as a look that errs.
 *
 * @param between first and last horn looked at in that time
 * @param shares of each material in use, the commonest first; tenths of two, sixths of three
 * @param probability that more than one was in use, averaged over the horns looked at in it
 */
public record Habit(SerialRange between, Map<String, Double> shares, double probability) {
    private static final double HALF_FROM = 0.45;
    private static final double HALF_TO = 0.55;

    public Habit {
        shares = Collections.unmodifiableMap(new LinkedHashMap<>(shares));
    }

    static Habit of(Spell spell) {
        Map<String, Double> shares = new LinkedHashMap<>();
        spell.shares().entrySet().stream()
                .filter(share -> share.getValue() > 0)
                .sorted(Map.Entry.<String, Double>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .forEach(share -> shares.put(share.getKey(), share.getValue()));
        return new Habit(new SerialRange(spell.from(), spell.to()), shares, spell.mixed());
    }

    /** Whether it explains a look at this serial: the material was one of those in use. */
    boolean explains(long serial, String material) {
        return between.contains(serial) && shares.containsKey(material);
    }

    /** "the works used both natural cork and woven wool felt between 45180 and 45700, about half each". */
    public String inWords() {
        List<String> names = List.copyOf(shares.keySet());
        String several = names.size() == 2 ? "both " : "";
        return "the works used %s%s between %d and %d, %s"
                .formatted(several, listed(names), between.from(), between.to(), shareInWords(names.getFirst()));
    }

    private String shareInWords(String commonest) {
        double share = shares.getOrDefault(commonest, 0.0);
        if (shares.size() == 2 && share > HALF_FROM && share < HALF_TO) {
            return "about half each";
        }
        int parts = shares.size() == 2 ? 10 : 6;
        return "about %d horns in %d with %s".formatted(Math.round(share * parts), parts, commonest);
    }

    /** "natural cork and woven wool felt". */
    static String listed(List<String> names) {
        String head = names.subList(0, names.size() - 1).stream().collect(Collectors.joining(", "));
        return head.isEmpty() ? names.getLast() : head + " and " + names.getLast();
    }
}
