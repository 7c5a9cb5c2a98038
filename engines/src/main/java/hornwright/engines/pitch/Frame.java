package hornwright.engines.pitch;

/**
 * One look at the sound.
 *
 * @param atS middle of the look, s
 * @param frequency Hz; NaN when nothing repeats
 * @param levelDb of 20 ms around it, dB below full scale
 * @param hollow the repeat is there but its own fundamental is not: several voices share it
 */
record Frame(double atS, double frequency, double levelDb, boolean hollow) {
    boolean voiced() {
        return !Double.isNaN(frequency);
    }
}
