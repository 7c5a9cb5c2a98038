package hornwright.bench.survey;

import java.util.Arrays;
import java.util.List;

/**
 * The photographs of an arrival, taken in this order in about ten minutes. What is not photographed before a screw is
 * turned cannot be shown afterwards. Source: common practice; the choice is bench judgement.
 */
public enum Shot {
    FRONT(Group.AS_IT_CAME, "front", "the whole horn from the front"),
    BACK(Group.AS_IT_CAME, "back", "the whole horn from the back"),
    LEFT(Group.AS_IT_CAME, "left", "the whole horn from the player’s left"),
    RIGHT(Group.AS_IT_CAME, "right", "the whole horn from the player’s right"),
    CASE(Group.AS_IT_CAME, "case", "case and everything in it"),
    SERIAL(Group.MARKS, "serial", "serial number"),
    ENGRAVING(Group.MARKS, "engraving", "engraving and maker’s name"),
    STAMPS_BODY(Group.MARKS, "stamps-body", "stamped numbers on body and bell"),
    STAMPS_KEYS(Group.MARKS, "stamps-keys", "stamped numbers on keys and guards"),
    NECK_LEFT(Group.NECK, "neck-left", "neck from the left, octave key and brace"),
    NECK_RIGHT(Group.NECK, "neck-right", "neck from the right"),
    TENON(Group.NECK, "tenon", "tenon, its stamped number and the receiver"),
    UPPER_FRONT(Group.STACKS, "upper-front", "upper stack from the front"),
    UPPER_LEFT(Group.STACKS, "upper-left", "upper stack from the left"),
    UPPER_RIGHT(Group.STACKS, "upper-right", "upper stack from the right"),
    LOWER_FRONT(Group.STACKS, "lower-front", "lower stack from the front"),
    LOWER_LEFT(Group.STACKS, "lower-left", "lower stack from the left"),
    LOWER_RIGHT(Group.STACKS, "lower-right", "lower stack from the right"),
    TABLE(Group.KEYS, "table", "low key table"),
    PALM(Group.KEYS, "palm", "palm keys"),
    SIDE(Group.KEYS, "side", "side keys and their guides"),
    BELL_KEYS(Group.KEYS, "bell-keys", "bell keys from both sides"),
    GUARDS(Group.KEYS, "guards", "guards with their felts"),
    THUMB(Group.KEYS, "thumb", "thumb rest, octave lever and hook"),
    BELL(Group.TUBE, "bell", "bell rim, brace and rings"),
    BOW(Group.TUBE, "bow", "bow and its ferrules"),
    DAMAGE(Group.TUBE, "damage", "each dent, crack and old solder joint"),
    PADS(Group.TRAY, "pads", "every pad face in one tray, in bench order"),
    MATERIALS(Group.TRAY, "materials", "corks, felts and springs that came off"),
    BARE(Group.TRAY, "bare", "the bare body, front and back");

    /** What is photographed together. */
    public enum Group {
        AS_IT_CAME("As it came"),
        MARKS("Marks"),
        NECK("Neck"),
        STACKS("Stacks"),
        KEYS("Other keys"),
        TUBE("Tube"),
        TRAY("After strip-down");

        private final String title;

        Group(String title) {
            this.title = title;
        }

        public String title() {
            return title;
        }

        public List<Shot> shots() {
            return Arrays.stream(Shot.values())
                    .filter(shot -> shot.group == this)
                    .toList();
        }
    }

    private final Group group;
    private final String id;
    private final String words;

    Shot(Group group, String id, String words) {
        this.group = group;
        this.id = id;
        this.words = words;
    }

    public Group group() {
        return group;
    }

    /** What a tick on the list is kept under. */
    public String id() {
        return id;
    }

    public String words() {
        return words;
    }
}
