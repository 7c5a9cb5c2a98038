package hornwright.bench.survey;

import hornwright.bench.horn.Word;
import org.jspecify.annotations.Nullable;

/**
 * What can be measured. The word is the one used in files; the seconds are what it takes a practised hand (bench
 * judgement, check yours).
 */
public enum ReadingKind implements Word {
    CUP_INSIDE("cup inside diameter", Subject.CUP, Observed.Amount.class, Unit.MILLIMETRE, "caliper", 6),
    CUP_DEPTH("cup depth", Subject.CUP, Observed.Amount.class, Unit.MILLIMETRE, "depth rod", 15),
    HOLE("hole diameter", Subject.HOLE, Observed.Amount.class, Unit.MILLIMETRE, "caliper", 15),
    AXIS_TO_CENTRE("axis to centre", Subject.CUP, Observed.Amount.class, Unit.MILLIMETRE, "rule", 20),
    AXIS_TO_FOOT("axis to foot", Subject.KEY, Observed.Amount.class, Unit.MILLIMETRE, "rule", 20),
    FRONT_HEIGHT("front height", Subject.CUP, Observed.Amount.class, Unit.MILLIMETRE, "wedge", 12),
    CENTRE_HEIGHT("centre height", Subject.CUP, Observed.Amount.class, Unit.MILLIMETRE, "depth rod", 20),
    THICKNESS("material thickness", Subject.PLACE, Observed.Amount.class, Unit.MILLIMETRE, "caliper", 8),
    FOOT_CLEARANCE("foot clearance", Subject.KEY, Observed.Amount.class, Unit.MILLIMETRE, "feeler", 40),
    RIM_GAP("worst rim gap", Subject.HOLE, Observed.RimGap.class, Unit.MILLIMETRE, "feeler", 50),
    TOUCH_WEIGHT("touch weight", Subject.KEY, Observed.Amount.class, Unit.NEWTON, "force gauge", 20),
    PLAY("play", Subject.KEY, Observed.Play.class, null, "fingers", 6),
    TRIAL_PAD("trial pad", Subject.CUP, Observed.TrialPad.class, Unit.MILLIMETRE, "feeler", 40),
    TRIAL_SHIM("trial shim", Subject.KEY, Observed.TrialShim.class, Unit.MILLIMETRE, "wedge", 45),
    LINK_SPACE("link space", Subject.LINK, Observed.Amount.class, Unit.MILLIMETRE, "feeler", 60),
    HINGE("hinge", Subject.KEY, Observed.Amount.class, Unit.MILLIMETRE, "feeler", 30),
    METAL_OFF("metal taken off", Subject.HOLE, Observed.Amount.class, Unit.MILLIMETRE, "caliper", 30),
    RIM_CHECK("rim check", Subject.HOLE, Observed.Says.class, null, "eye", 30),
    NECK("neck", Subject.HORN, Observed.Amount.class, Unit.MILLIMETRE, "micrometer", 20),
    NECK_CHECK("neck check", Subject.HORN, Observed.Says.class, null, "eye", 20),
    CLEARANCE("clearance", Subject.LINK, Observed.Amount.class, Unit.MILLIMETRE, "feeler", 30),
    LOST_MOTION("lost motion", Subject.KEY, Observed.Amount.class, Unit.MILLIMETRE, "rule", 20),
    LEAK_SITE("leak site", Subject.PLACE, Observed.Says.class, null, "light and feeler", 30),
    ADHESIVE_FOUND("adhesive found", Subject.PLACE, Observed.Says.class, null, "eye", 10),
    FINISH_SIGN("finish sign", Subject.HORN, Observed.Says.class, null, "eye", 20),
    PIN("pin", Subject.HORN, Observed.Pin.class, null, "eye", 30),
    CLOCK_STARTED("clock started", Subject.HORN, Observed.Says.class, null, "clock", 1),
    TIME_SPENT("time spent", Subject.HORN, Observed.Amount.class, Unit.MINUTE, "clock", 1),
    /** Its point says which key was pressed; 0 where no leaf went in. */
    LINKED_GAP("gap under a linked cup", Subject.CUP, Observed.Amount.class, Unit.MILLIMETRE, "thin leaf", 15),
    /** In a contact that holds a sprung cup shut; its point says which key was pressed. */
    CONTACT_GAP("gap in a contact", Subject.LINK, Observed.Amount.class, Unit.MILLIMETRE, "thin leaf", 15),
    LEAK("leak", Subject.HORN, Observed.Amount.class, Unit.MILLILITRES_PER_SECOND, "leak gauge", 60),
    TUNING("tuning", Subject.HORN, Observed.Amount.class, Unit.CENTS, "tuner", 10),
    STAMP("stamped number", Subject.HORN, Observed.Says.class, null, "eye", 10),
    SERIAL("serial", Subject.HORN, Observed.Says.class, null, "eye", 10),
    SWITCH("switch", Subject.HORN, Observed.Says.class, null, "eye", 5);

    private final String word;
    private final Subject subject;
    private final Class<? extends Observed> says;
    private final @Nullable Unit unit;
    private final String usualInstrument;
    private final int seconds;

    ReadingKind(
            String word,
            Subject subject,
            Class<? extends Observed> says,
            @Nullable Unit unit,
            String usualInstrument,
            int seconds) {
        this.word = word;
        this.subject = subject;
        this.says = says;
        this.unit = unit;
        this.usualInstrument = usualInstrument;
        this.seconds = seconds;
    }

    @Override
    public String word() {
        return word;
    }

    public Subject subject() {
        return subject;
    }

    /** The kind of observation this reading must carry. */
    public Class<? extends Observed> says() {
        return says;
    }

    /** The unit it is typed in; null for grades and words. */
    public @Nullable Unit unit() {
        return unit;
    }

    public String usualInstrument() {
        return usualInstrument;
    }

    /** About how long it takes. */
    public int seconds() {
        return seconds;
    }
}
