package hornwright.engines.numerics;

/**
 * The discrete Fourier transform of a fixed length that is a power of two, in place on split arrays; radix 2, twiddles
 * made once. Error about 1e-15 of the largest entry times the logarithm of the length.
 *
 * <p>Source: Cooley and Tukey, An algorithm for the machine calculation of complex Fourier series, 1965.
 */
public final class Fourier {
    private final int size;
    private final double[] cos;
    private final double[] sin;
    private final int[] reversed;

    /** @param size a power of two, at least 2 */
    public Fourier(int size) {
        if (size < 2 || Integer.bitCount(size) != 1) {
            throw new IllegalArgumentException("a transform needs a power of two, not " + size);
        }
        this.size = size;
        cos = new double[size / 2];
        sin = new double[size / 2];
        for (int i = 0; i < size / 2; i++) {
            cos[i] = Math.cos(2 * Math.PI * i / size);
            sin[i] = Math.sin(2 * Math.PI * i / size);
        }
        reversed = new int[size];
        int bits = Integer.numberOfTrailingZeros(size);
        for (int i = 0; i < size; i++) {
            reversed[i] = Integer.reverse(i) >>> (32 - bits);
        }
    }

    public int size() {
        return size;
    }

    /** X[k] = sum over j of x[j] exp(-2 pi i jk / size). */
    public void forward(double[] re, double[] im) {
        for (int i = 0; i < size; i++) {
            int j = reversed[i];
            if (i < j) {
                swap(re, i, j);
                swap(im, i, j);
            }
        }
        for (int half = 1; half < size; half *= 2) {
            butterflies(re, im, half);
        }
    }

    /** The inverse of {@link #forward}, divided by the size. */
    public void inverse(double[] re, double[] im) {
        forward(im, re);
        for (int i = 0; i < size; i++) {
            re[i] /= size;
            im[i] /= size;
        }
    }

    private void butterflies(double[] re, double[] im, int half) {
        int stride = size / (2 * half);
        for (int start = 0; start < size; start += 2 * half) {
            for (int k = 0; k < half; k++) {
                double c = cos[k * stride];
                double s = sin[k * stride];
                int a = start + k;
                int b = a + half;
                double r = re[b] * c + im[b] * s;
                double i = im[b] * c - re[b] * s;
                re[b] = re[a] - r;
                im[b] = im[a] - i;
                re[a] += r;
                im[a] += i;
            }
        }
    }

    private static void swap(double[] x, int i, int j) {
        double kept = x[i];
        x[i] = x[j];
        x[j] = kept;
    }
}
