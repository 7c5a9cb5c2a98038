package hornwright.bench.sound;

import java.util.List;

/**
 * What pad heights could do for the tuning: an offer the restorer accepts line by line, never part of a plan by itself.
 *
 * @param common what all notes share, cents; the mouthpiece on its cork, not a height
 * @param changes the smallest set of heights found; none when heights do not help
 * @param left notes that stay outside the shop's band, with what to look at instead
 */
public record HeightOffer(double common, List<Change> changes, List<Left> left) {
    public HeightOffer {
        changes = List.copyOf(changes);
        left = List.copyOf(left);
    }

    /**
     * One cup to another height, at the front edge.
     *
     * @param effects on every note it moves by half a cent or more, with the whole offer done
     */
    public record Change(String cup, double fromFrontMm, double toFrontMm, List<Effect> effects) {
        public Change {
            effects = List.copyOf(effects);
        }

        /** Notes this change takes out of the band; they stand on the same line as the change. */
        public List<Effect> pushedOut() {
            return effects.stream().filter(Effect::pushedOut).toList();
        }
    }

    /**
     * What a change does to a note.
     *
     * @param centsPerMm of this cup at its front edge
     * @param before cents, the common part taken off
     * @param after cents with the whole offer done, from the air column itself
     * @param pushedOut in the band before and not after
     */
    public record Effect(String fingering, double centsPerMm, double before, double after, boolean pushedOut) {}

    /**
     * A note heights do not bring home.
     *
     * @param cents with the whole offer done
     * @param ladder what to look at, in this order
     */
    public record Left(String fingering, double cents, List<Step> ladder) {
        public Left {
            ladder = List.copyOf(ladder);
        }
    }

    /** What moves a note that heights cannot move, in the order to try it. */
    public enum Step {
        MOUTHPIECE("mouthpiece: its volume and where it stands on the cork; a wrong volume shows as a bad octave"),
        NECK("neck: another neck, a dent, a pull-down, the tenon's seat"),
        VENT("octave vent: its opening, its height, dirt in the pip"),
        LEAK("leak: a pad that does not close takes the low notes first");

        private final String words;

        Step(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
