package hornwright.bench.archive;

import hornwright.engines.belief.Sighting;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * One more look worth taking: on an original horn from these serials, at this place.
 *
 * @param doubtNow entropy of the material at the serial asked about, in bits
 * @param doubtAfter its expected value once that horn has been looked at
 */
public record NextLook(String place, SerialRange serials, double doubtNow, double doubtAfter) {
    static final Comparator<NextLook> MOST_TELLING_FIRST =
            Comparator.comparingDouble(NextLook::gain).reversed().thenComparing(NextLook::place);

    /** Bits below which a place is as good as settled, and below which a look is not worth naming. */
    private static final double SETTLED = 0.05;

    private static final double WORTH_NAMING = 0.01;

    public double gain() {
        return doubtNow - doubtAfter;
    }

    /** "look at foot.d on an original horn between 41000 and 42500". */
    public String inWords() {
        return "look at " + place + " on an original horn "
                + (serials.isOne() ? "near " + serials.from() : "between " + serials.from() + " and " + serials.to());
    }

    /** The gap between two horns looked at in which one more would lower the doubt about this serial most. */
    static Optional<NextLook> best(PlaceArchive place, long serial) {
        if (place.materials().isEmpty()) {
            return Optional.empty();
        }
        double now = doubt(place.chances(serial, List.of()));
        if (now < SETTLED) {
            return Optional.empty();
        }
        return best(place, serial, now).filter(look -> look.gain() > WORTH_NAMING);
    }

    /** A look can teach no more than it is uncertain itself, so the most uncertain gaps come first and the rest is left. */
    private static Optional<NextLook> best(PlaceArchive place, long serial, double now) {
        List<SerialRange> gaps = gaps(place, serial);
        List<Map<String, Double>> likely =
                place.likely(gaps.stream().map(NextLook::middle).toList());
        List<Integer> order = IntStream.range(0, gaps.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -doubt(likely.get(i))))
                .toList();
        @Nullable NextLook best = null;
        for (int i : order) {
            double most = doubt(likely.get(i));
            if (most <= (best == null ? WORTH_NAMING : best.gain())) {
                break;
            }
            double after = after(place, serial, middle(gaps.get(i)), likely.get(i));
            if (best == null || now - after > best.gain()) {
                best = new NextLook(place.place(), gaps.get(i), now, after);
            }
        }
        return Optional.ofNullable(best);
    }

    static long middle(SerialRange gap) {
        return gap.from() + (gap.to() - gap.from()) / 2;
    }

    static List<SerialRange> gaps(PlaceArchive place, long serial) {
        TreeSet<Long> serials = new TreeSet<>();
        place.sightings().forEach(s -> serials.add(s.serial()));
        if (serials.isEmpty()) {
            return List.of(SerialRange.one(serial));
        }
        List<SerialRange> gaps = new ArrayList<>();
        if (serial < serials.first() || serial > serials.last()) {
            gaps.add(SerialRange.one(serial));
        }
        long below = serials.first();
        for (long above : serials.tailSet(below, false)) {
            if (above - below > 1) {
                gaps.add(new SerialRange(below + 1, above - 1));
            }
            below = above;
        }
        return gaps;
    }

    /** Expected doubt after one full look at that serial, whatever it shows. */
    static double after(PlaceArchive place, long serial, long probe, Map<String, Double> likely) {
        double expected = 0;
        for (Map.Entry<String, Double> shown : likely.entrySet()) {
            List<Sighting> imagined = List.of(new Sighting(probe, shown.getKey(), 1));
            expected += shown.getValue() * doubt(place.chances(serial, imagined));
        }
        return expected;
    }

    static double doubt(Map<String, Double> probabilities) {
        double bits = 0;
        for (double p : probabilities.values()) {
            bits -= p > 0 ? p * Math.log(p) / Math.log(2) : 0;
        }
        return bits;
    }
}
