package hornwright.engines.air;

/** One fingering, asked for its input admittance. */
interface Response {
    /** Admittance at the mouthpiece, m³/(Pa s), at a frequency in Hz. */
    Complex admittance(double frequency);

    /**
     * Change of the admittance per height of every open pad, m³/(Pa s) per m, in the order of the fingering's open holes.
     */
    Complex[] slopes(double frequency);
}
