package hornwright.desk.reckon;

import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.engines.linkage.Landing;
import hornwright.engines.linkage.LinkageInput;
import hornwright.engines.linkage.Mechanism;
import hornwright.engines.linkage.Mechanism.Limits;
import hornwright.engines.linkage.Mechanism.Sense;
import hornwright.engines.linkage.Mechanism.Towards;
import hornwright.engines.linkage.Press;
import hornwright.engines.linkage.Spread;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads a linkage input from millimetres and newtons; ids are checked against each other before anything is computed. */
record LinkageFields(
        List<Mechanism.Key> keys,
        List<Mechanism.Cup> cups,
        List<Mechanism.Stop> stops,
        List<Mechanism.Link> links,
        List<Mechanism.Spring> springs,
        List<Press> presses,
        List<Landing> landings,
        @Nullable Spread spread) {

    /** An answer keeps one number a draw; more than this many would not fit. */
    private static final int MOST_DRAWS = 10_000_000;

    private static final Map<String, Limits> LIMITS = words("opening", Limits.OPENING, "closing", Limits.CLOSING);
    private static final Map<String, Towards> TOWARDS = words("open", Towards.OPEN, "closed", Towards.CLOSED);

    private static <E> Map<String, E> words(String first, E one, String second, E two) {
        Map<String, E> words = new LinkedHashMap<>();
        words.put(first, one);
        words.put(second, two);
        return words;
    }

    static LinkageFields read(Fields in) {
        LinkageFields read = new LinkageFields(
                in.someOf("keys", LinkageFields::key),
                in.list("cups", LinkageFields::cup),
                in.list("stops", LinkageFields::stop),
                in.list("links", LinkageFields::link),
                in.list("springs", LinkageFields::spring),
                in.list("press", LinkageFields::press),
                in.list("sets", LinkageFields::landing),
                in.objectIfAny("spread", LinkageFields::spread));
        LinkageIds.check(read, in);
        return read;
    }

    /** Only to be called once no fault was found. */
    LinkageInput input() {
        return new LinkageInput(new Mechanism(keys, cups, stops, links, springs), presses, landings, spread);
    }

    private static Mechanism.Key key(Fields f) {
        double flex = f.numberOr("flex_rad_per_Nmm", 0, Bound.NOT_NEGATIVE, "3e-5");
        return new Mechanism.Key(f.text("id", "f"), flex / Unit.NMM.si(1));
    }

    private static Mechanism.Cup cup(Fields f) {
        return new Mechanism.Cup(
                f.text("id", "cup.f"),
                f.text("key", "f"),
                Unit.MM.si(f.number("arm_mm", Bound.POSITIVE, "30")),
                Unit.N_PER_MM.si(f.number("stiffness_N_per_mm", Bound.POSITIVE, "8")),
                Unit.MM.si(f.numberOr("offset_mm", 0, Bound.ANY, "0")));
    }

    private static Mechanism.Stop stop(Fields f) {
        return new Mechanism.Stop(
                f.text("id", "foot.f"),
                f.text("key", "f"),
                Unit.MM.si(f.number("arm_mm", Bound.POSITIVE, "12")),
                Unit.MM.si(f.number("clearance_mm", Bound.NOT_NEGATIVE, "4.0")),
                Unit.MM.si(f.number("thickness_mm", Bound.NOT_NEGATIVE, "1.6")),
                Unit.N_PER_MM.si(f.number("stiffness_N_per_mm", Bound.POSITIVE, "200")),
                f.choiceOr("limits", LIMITS, Limits.OPENING));
    }

    private static Mechanism.Link link(Fields f) {
        return new Mechanism.Link(
                f.text("id", "f>fs"),
                f.text("driver", "f"),
                Unit.MM.si(f.number("driverArm_mm", Bound.POSITIVE, "14")),
                f.text("follower", "fs"),
                Unit.MM.si(f.number("followerArm_mm", Bound.POSITIVE, "13")),
                Unit.MM.si(f.number("space_mm", Bound.NOT_NEGATIVE, "1.0")),
                Unit.MM.si(f.number("thickness_mm", Bound.NOT_NEGATIVE, "1.0")),
                Unit.N_PER_MM.si(f.number("stiffness_N_per_mm", Bound.POSITIVE, "300")),
                sense(f));
    }

    private static Sense sense(Fields f) {
        double sense = f.number("sense", Bound.ANY, "1");
        if (Math.abs(sense) != 1) {
            f.fault("sense", sense + " is neither 1 (closes) nor -1 (opens)", "\"sense\": 1");
        }
        return sense < 0 ? Sense.OPENS : Sense.CLOSES;
    }

    private static Mechanism.Spring spring(Fields f) {
        return new Mechanism.Spring(
                f.text("key", "f"),
                Unit.NMM.si(f.number("torque_Nmm", Bound.NOT_NEGATIVE, "12")),
                Unit.NMM.si(f.number("rate_Nmm_per_rad", Bound.NOT_NEGATIVE, "20")),
                f.choice("towards", TOWARDS));
    }

    private static Press press(Fields f) {
        return new Press(
                f.text("key", "f"),
                f.number("force_N", Bound.NOT_NEGATIVE, "0.8"),
                Unit.MM.si(f.number("arm_mm", Bound.ANY, "35")));
    }

    private static Landing landing(Fields f) {
        Press press = new Press(
                f.text("press", "f"),
                f.number("force_N", Bound.NOT_NEGATIVE, "1.0"),
                Unit.MM.si(f.number("arm_mm", Bound.POSITIVE, "35")));
        return new Landing(press, f.texts("closes"));
    }

    private static Spread spread(Fields f) {
        int draws = f.whole("draws", Bound.COUNT, "10000");
        if (draws > MOST_DRAWS) {
            f.fault("draws", draws + " draws are too many, at most " + MOST_DRAWS, "\"draws\": 10000");
        }
        return new Spread(
                Unit.MM.si(f.number("thickness_mm", Bound.NOT_NEGATIVE, "0.05")),
                Unit.MM.si(f.number("arm_mm", Bound.NOT_NEGATIVE, "0.1")),
                Unit.MM.si(f.number("offset_mm", Bound.NOT_NEGATIVE, "0.03")),
                draws,
                (long) f.number("seed", Bound.WHOLE, "1"),
                Unit.UM.si(f.number("closed_um", Bound.NOT_NEGATIVE, "5")));
    }
}
