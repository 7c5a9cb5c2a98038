package hornwright.engines.pitch;

import java.util.Arrays;

/** The middle of what has come so far; kept sorted, so that one more costs a shift. */
final class RunningMedian {
    private double[] sorted = new double[64];
    private int size;

    void add(double value) {
        if (size == sorted.length) {
            sorted = Arrays.copyOf(sorted, 2 * size);
        }
        int found = Arrays.binarySearch(sorted, 0, size, value);
        int at = found < 0 ? -found - 1 : found;
        System.arraycopy(sorted, at, sorted, at + 1, size - at);
        sorted[at] = value;
        size++;
    }

    /** Of the lower two when the number is even; there must be at least one. */
    double value() {
        return sorted[(size - 1) / 2];
    }

    void clear() {
        size = 0;
    }
}
