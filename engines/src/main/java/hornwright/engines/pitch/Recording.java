package hornwright.engines.pitch;

/**
 * Sound of one channel.
 *
 * @param samples -1 to 1; not copied, and not to be changed afterwards
 * @param rate samples a second, 4000 to 768000
 */
public record Recording(double[] samples, double rate) {
    public Recording {
        if (!(rate >= 4000 && rate <= 768_000)) {
            throw new IllegalArgumentException("a recording has 4000 to 768000 samples a second, not " + rate);
        }
    }

    public double seconds() {
        return samples.length / rate;
    }
}
