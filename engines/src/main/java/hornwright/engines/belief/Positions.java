package hornwright.engines.belief;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The different serials in ascending order, each with what was seen there. Sightings at the same serial are merged;
 * a serial whose sightings all weigh nothing is no position.
 *
 * <p>Amounts are kept in steps of {@code unit}: when all weights are multiples of 1/q for some q up to 100 the steps
 * are whole numbers, and log-gamma comes out of a table.
 */
final class Positions {
    private static final int FINEST = 100;
    private static final double ROUNDING = 1e-9;

    final long[] serials;
    final double unit;
    final boolean whole;
    private final List<String> materials;
    private final int[] firstEntry;
    private final int[] entryMaterial;
    private final double[] entrySteps;
    private final double[][] running;

    Positions(List<Sighting> sightings, List<String> materials) {
        this.materials = materials;
        int divisor = commonDivisor(sightings);
        whole = divisor > 0;
        unit = whole ? 1.0 / divisor : 1;
        Map<String, Integer> index = new LinkedHashMap<>();
        materials.forEach(m -> index.put(m, index.size()));
        TreeMap<Long, Map<Integer, Double>> merged = new TreeMap<>();
        for (Sighting seen : sightings) {
            if (seen.weight() > 0) {
                double steps = whole ? Math.rint(seen.weight() * divisor) : seen.weight();
                merged.computeIfAbsent(seen.serial(), s -> new TreeMap<>())
                        .merge(index.getOrDefault(seen.material(), 0), steps, Double::sum);
            }
        }
        serials = merged.keySet().stream().mapToLong(Long::longValue).toArray();
        firstEntry = new int[serials.length + 1];
        int entries = merged.values().stream().mapToInt(Map::size).sum();
        entryMaterial = new int[entries];
        entrySteps = new double[entries];
        running = new double[materials.size()][serials.length + 1];
        fill(new ArrayList<>(merged.values()));
    }

    private void fill(List<Map<Integer, Double>> seen) {
        int entry = 0;
        for (int i = 0; i < seen.size(); i++) {
            for (double[] sum : running) {
                sum[i + 1] = sum[i];
            }
            for (Map.Entry<Integer, Double> one : seen.get(i).entrySet()) {
                entryMaterial[entry] = one.getKey();
                entrySteps[entry++] = one.getValue();
                running[one.getKey()][i + 1] += one.getValue();
            }
            firstEntry[i + 1] = entry;
        }
    }

    /** Smallest q up to 100 such that every weight is a multiple of 1/q, or 0. */
    private static int commonDivisor(List<Sighting> sightings) {
        for (int q = 1; q <= FINEST; q++) {
            int divisor = q;
            if (sightings.stream().allMatch(s -> isWhole(s.weight() * divisor, s.weight()))) {
                return q;
            }
        }
        return 0;
    }

    private static boolean isWhole(double steps, double weight) {
        return Math.abs(steps - Math.rint(steps)) <= ROUNDING && (weight == 0 || Math.rint(steps) > 0);
    }

    int size() {
        return serials.length;
    }

    int materials() {
        return materials.size();
    }

    int firstEntry(int position) {
        return firstEntry[position];
    }

    int entryMaterial(int entry) {
        return entryMaterial[entry];
    }

    double entrySteps(int entry) {
        return entrySteps[entry];
    }

    /** Weight of one material in positions start (included) to end (excluded). */
    double count(int material, int start, int end) {
        return (running[material][end] - running[material][start]) * unit;
    }

    double totalSteps() {
        double total = 0;
        for (double[] sum : running) {
            total += sum[size()];
        }
        return total;
    }

    Map<String, Double> counts(int start, int end) {
        Map<String, Double> counts = new LinkedHashMap<>();
        for (int k = 0; k < materials(); k++) {
            counts.put(materials.get(k), count(k, start, end));
        }
        return counts;
    }
}
