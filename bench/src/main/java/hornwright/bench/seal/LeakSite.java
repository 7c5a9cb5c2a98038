package hornwright.bench.seal;

import hornwright.bench.horn.Identified;

/**
 * One spot where air can get out.
 *
 * @param id the place it is tried at, or the joint
 * @param name as it is said at the bench
 * @param way how it is tried
 */
public record LeakSite(String id, String name, Way way) implements Identified {
    /** How a site is tried; common practice. */
    public enum Way {
        PAD("light inside, then a feeler all round, finger light"),
        VENT("feeler round the small pad, in each state of the octave mechanism"),
        TENON("neck on, screw clamped, then with the screw off; turned a quarter either way"),
        PIP("plug both ends of the tube and put it under a little pressure; a drop of soapy water at the foot"),
        JOINT("that part alone, ends plugged, a little pressure; a drop of soapy water along the joint"),
        FOOT("a drop of soapy water round the foot, that part under a little pressure"),
        CORK("mouthpiece on, turned; air must not creep past the cork");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
