package hornwright.bench.archive;

import hornwright.engines.belief.Sighting;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

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
        if (place.materials().size() < 2) {
            return Optional.empty();
        }
        double now = doubt(place.answer(serial, List.of()).at().getFirst().probabilities());
        if (now < SETTLED) {
            return Optional.empty();
        }
        return gaps(place, serial).stream()
                .map(gap -> new NextLook(place.place(), gap, now, after(place, serial, gap)))
                .filter(look -> look.gain() > WORTH_NAMING)
                .max(Comparator.comparingDouble(NextLook::gain));
    }

    private static List<SerialRange> gaps(PlaceArchive place, long serial) {
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

    /** Expected doubt after one full look in the middle of a gap, whatever it shows. */
    private static double after(PlaceArchive place, long serial, SerialRange gap) {
        long probe = gap.from() + (gap.to() - gap.from()) / 2;
        Map<String, Double> likely =
                place.answer(probe, List.of()).at().getFirst().probabilities();
        double expected = 0;
        for (Map.Entry<String, Double> shown : likely.entrySet()) {
            List<Sighting> imagined = List.of(new Sighting(probe, shown.getKey(), 1));
            Map<String, Double> then =
                    place.answer(serial, imagined).at().getFirst().probabilities();
            expected += shown.getValue() * doubt(then);
        }
        return expected;
    }

    private static double doubt(Map<String, Double> probabilities) {
        double bits = 0;
        for (double p : probabilities.values()) {
            bits -= p > 0 ? p * Math.log(p) / Math.log(2) : 0;
        }
        return bits;
    }
}
