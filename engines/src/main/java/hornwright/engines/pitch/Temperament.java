package hornwright.engines.pitch;

/**
 * Equal temperament over a reference for A4. A note is counted in semitones from C-1, as in ISO 16 with A4 = 69.
 *
 * @param reference frequency of A4, Hz
 */
public record Temperament(double reference) {
    private static final int A4 = 69;
    private static final String[] NAMES = {"C", "C#", "D", "Eb", "E", "F", "F#", "G", "G#", "A", "Bb", "B"};

    /** The nearest note. */
    public int nearest(double frequency) {
        return (int) Math.rint(A4 + semitones(frequency));
    }

    public double frequency(int note) {
        return reference * Math.pow(2, (note - A4) / 12.0);
    }

    /** How far above the nearest note, -50 to 50 cents. */
    public double cents(double frequency) {
        return cents(frequency, frequency(nearest(frequency)));
    }

    /** "Bb3". */
    public static String name(int note) {
        return NAMES[Math.floorMod(note, 12)] + (Math.floorDiv(note, 12) - 1);
    }

    /** 1200 log2(f / of). */
    public static double cents(double frequency, double of) {
        return 1200 * Math.log(frequency / of) / Math.log(2);
    }

    private double semitones(double frequency) {
        return cents(frequency, reference) / 100;
    }
}
