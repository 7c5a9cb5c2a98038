package hornwright.engines.air;

import hornwright.engines.air.AirResult.Peak;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Resonances: the local minima of |Y|², which stays smooth where |Z| runs to infinity. */
final class Peaks {
    /** Resonances are looked for between these, Hz. */
    private static final double LOWEST = 20;

    private static final double HIGHEST = 6000;

    /** A narrower peak, Hz, has no loss but that of rounding. */
    private static final double NARROWEST = 1e-5;

    private final Samples samples;
    private final Response response;
    private final boolean withQuality;

    Peaks(Samples samples, Response response, boolean withQuality) {
        this.samples = samples;
        this.response = response;
        this.withQuality = withQuality;
    }

    /** The lowest {@code wanted} resonances, ascending. */
    List<Peak> lowest(int wanted) {
        List<Peak> found = new ArrayList<>();
        int last = (int) (HIGHEST / samples.step);
        for (int i = Math.max(2, (int) (LOWEST / samples.step)); i < last && found.size() < wanted; i++) {
            double here = samples.squared(i);
            if (here <= samples.squared(i - 1) && here < samples.squared(i + 1)) {
                Peak peak = refined(i);
                if (peak.frequency() >= LOWEST) {
                    found.add(peak);
                }
            }
        }
        return found;
    }

    private Peak refined(int index) {
        Valley valley = new Valley(
                response,
                new double[] {(index - 1) * samples.step, index * samples.step, (index + 1) * samples.step},
                new Complex[] {samples.at(index - 1), samples.at(index), samples.at(index + 1)});
        double frequency = valley.bottom();
        double least = valley.admittance().squared();
        if (!withQuality) {
            return new Peak(frequency, 1 / Math.sqrt(least), null);
        }
        Double below = flank(index, frequency, least, -1);
        Double above = flank(index, frequency, least, 1);
        if (below == null || above == null) {
            return new Peak(frequency, 1 / Math.sqrt(least), null);
        }
        boolean lossless = above - below < NARROWEST;
        return lossless
                ? new Peak(frequency, Double.POSITIVE_INFINITY, null)
                : new Peak(frequency, 1 / Math.sqrt(least), frequency / (above - below));
    }

    /** Where |Y|² has doubled on one side, before it falls again; null if it does not. */
    private @Nullable Double flank(int index, double frequency, double least, int way) {
        if (!(least > 0)) {
            return null;
        }
        int i = (index + way) * samples.step * way > frequency * way ? index + way : index + 2 * way;
        double before = least;
        double from = frequency;
        while (i >= 1 && samples.squared(i) >= before) {
            double here = samples.squared(i);
            if (here >= 2 * least) {
                return Root.between(
                        f -> flatness(response.admittance(f).squared(), least),
                        from,
                        flatness(before, least),
                        i * samples.step,
                        flatness(here, least),
                        1e-6);
            }
            before = here;
            from = i * samples.step;
            i += way;
        }
        return null;
    }

    /** Nearly linear in frequency along a flank, zero where |Y|² is twice the least. */
    private static double flatness(double squared, double least) {
        return Math.sqrt(Math.max(0, squared / least - 1)) - 1;
    }
}
