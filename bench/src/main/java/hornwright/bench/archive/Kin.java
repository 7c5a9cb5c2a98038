package hornwright.bench.archive;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What the other places of a family (the feet of a stack) tell of one on which too few horns were looked at. It stands
 * beside what is said of the place itself: it fills no gap and no grade knows of it.
 *
 * @param others places of the family that it was reckoned from, which go with each other
 * @param horns on which at least one of these was looked at
 * @param looks at the place itself that count for anything
 * @param follows probability that the place goes with the others and not its own way
 * @param probabilities of each material at this serial, both ways weighed
 */
public record Kin(
        String place,
        long serial,
        List<String> others,
        int horns,
        int looks,
        double follows,
        Map<String, Double> probabilities) {
    private static final double HALF = 0.5;

    public Kin {
        others = List.copyOf(others);
        probabilities = Collections.unmodifiableMap(new LinkedHashMap<>(probabilities));
    }

    /** The likeliest material. */
    public String material() {
        return PlaceArchive.mostProbable(probabilities);
    }

    public double probability() {
        return probabilities.getOrDefault(material(), 0.0);
    }

    /** "6 others of its kind, 31 horns: most likely natural cork, probability 0.94; its one look agrees with them". */
    public String inWords() {
        return "%d others of its kind, looked at on %d horns: most likely %s, probability %s; %s"
                .formatted(
                        others.size(),
                        horns,
                        material(),
                        String.format(Locale.ROOT, "%.2f", Math.min(0.99, probability())),
                        standing());
    }

    /** "not assessed; 6 others of this kind most likely had natural cork": of a gap, with its grade and no figure. */
    public String ofGap() {
        return "%s; %d others of this kind most likely had %s"
                .formatted(Grade.NOT_ASSESSED.word(), others.size(), material());
    }

    private String standing() {
        if (looks == 0) {
            return "whether it goes with them nobody has looked";
        }
        boolean one = looks == 1;
        String told = one ? "its one look " : "its " + looks + " looks ";
        if (follows >= HALF) {
            return told + (one ? "agrees" : "agree") + " with them";
        }
        return told + (one ? "speaks" : "speak") + " for a way of its own";
    }
}
