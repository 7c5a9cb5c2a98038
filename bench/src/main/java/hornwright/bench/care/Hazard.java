package hornwright.bench.care;

import java.util.List;

/** A kind of work that can do harm, with what to mind. All of it is common practice, none of it is a rule of law. */
public enum Hazard {
    BENDING(
            "bending an arm or a cup",
            "Cast arms, arms that cracked once and soldered cup joints break: look first, support at the joint.",
            "Small steps, never against the hole.",
            "Afterwards recheck fit and links."),
    LEVELLING(
            "levelling a hole",
            "Never file a rolled rim. Leak-test a soldered ring before anything else.",
            "Metal taken off does not come back: owner's yes, and log the millimetres.",
            "Not on conservation jobs."),
    ROLLED_RIM(
            "levelling a rolled rim",
            "Lift from inside in small steps, no press.",
            "Stop at 0.05 mm and float the pad."),
    HEAT(
            "heat",
            "Pearls and celluloid off first: celluloid burns.",
            "Old lacquer scorches; soft solder nearby lets go; springs out first.",
            "Keep flame from solvent and alcohol, whose flame can hardly be seen; extinguisher at hand."),
    SOLVENT(
            "solvent",
            "Alcohol attacks spirit lacquer and the shellac you want to keep; ketones lift lacquer.",
            "No ammonia and no acid on stressed old brass, gold wash or thin silver.",
            "Small open amounts, ventilation, gloves, no flame; follow the data sheet and local rules."),
    SWEDGING(
            "closing a hinge tube",
            "Rod in the tube; stop when it still turns freely.",
            "Plated tubes mark. It cannot be undone: owner's yes."),
    TENON("fitting a neck tenon", "A hundredth of a millimetre at a time, and try the neck each time."),
    SPRING(
            "springs",
            "Needle springs stab and cut ends fly: eye guard on, catch the end.",
            "Old blued steel is not bent again.",
            "A stronger G♯ spring makes low B and B♭ heavy."),
    CLAMPING("clamping", "No clamp on soldered rings or soft arms, no oversize pad forced in."),
    SOLDERING(
            "soldering",
            "Old solder holds lead: do not sand it dry, wash hands, nothing to eat at the bench.",
            "Flux fume: ventilation."),
    DUST("dust", "Felt, leather, buffing and old case dust: mask and extraction; an old case may hold insecticide."),
    NICKEL("nickel", "Nickel silver and nickel plate can set off an allergy: gloves, and tell the owner."),
    MOUTH("play and suction tests", "Disinfect what touches the mouth; use your own mouthpiece.");

    /** Said once on each page that carries cautions. */
    public static final String WHO_DECIDES =
            "The usual cautions. Local codes, data sheets and licensed practice come first.";

    private final String work;
    private final List<String> cautions;

    Hazard(String work, String... cautions) {
        this.work = work;
        this.cautions = List.of(cautions);
    }

    /** The work in words. */
    public String work() {
        return work;
    }

    /** What to mind, each a sentence. */
    public List<String> cautions() {
        return cautions;
    }

    /** All cautions in one line. */
    public String inOneLine() {
        return String.join(" ", cautions);
    }
}
