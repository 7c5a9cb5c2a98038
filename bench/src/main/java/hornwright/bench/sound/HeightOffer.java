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
     * @param effects on every note it moves by half a cent or more or spoils
     */
    public record Change(String cup, double fromFrontMm, double toFrontMm, List<Effect> effects) {
        public Change {
            effects = List.copyOf(effects);
        }

        /** Notes this change spoils; they stand on the same line as the change. */
        public List<Effect> spoiled() {
            return effects.stream().filter(effect -> effect.harm() != Harm.NONE).toList();
        }
    }

    /**
     * What a change does to a note; cents have the common part taken off and come from the air column itself.
     *
     * @param before cents with none of the changes made
     * @param alone cents with this change made and no other
     * @param after cents with all changes made
     */
    public record Effect(String fingering, double before, double alone, double after, Harm harm) {}

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
