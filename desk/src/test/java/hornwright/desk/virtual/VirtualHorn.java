package hornwright.desk.virtual;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Layer;
import hornwright.bench.horn.Rest;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.PadClass;
import java.util.ArrayList;
import java.util.List;

/** An invented horn: a pattern everybody knows and a truth nobody does. */
record VirtualHorn(long seed, Keywork pattern, List<VirtualCup> cups) {
    VirtualHorn {
        cups = List.copyOf(cups);
    }

    static VirtualHorn invent(Keywork pattern, long seed) {
        Draw whole = Draw.of(seed, "horn");
        double depth = whole.normal(Spread.DEPTH_HORN);
        double gap = whole.normal(Spread.GAP_HORN);
        List<VirtualCup> cups = new ArrayList<>();
        for (Cup cup : pattern.cups()) {
            cups.add(invent(pattern, cup, depth, gap, Draw.of(seed, cup.id())));
        }
        return new VirtualHorn(seed, pattern, cups);
    }

    VirtualHorn level() {
        return new VirtualHorn(
                seed, pattern, cups.stream().map(VirtualCup::level).toList());
    }

    /** The same horn under pads of another class. The pattern's pads, and so those of the usual way, are medium. */
    VirtualHorn padded(PadClass padClass, ShopRules rules) {
        double times = rules.value(padClass.rule()) / rules.value(PadClass.MEDIUM.rule());
        return new VirtualHorn(
                seed, pattern, cups.stream().map(cup -> cup.stiffer(times)).toList());
    }

    private static VirtualCup invent(Keywork pattern, Cup cup, double depthOff, double gapOff, Draw draw) {
        Key key = pattern.keyOf(cup);
        double hole = pattern.holeOf(cup).diameterMm() * Math.exp(share(draw, Spread.HOLE, pattern, cup));
        double arm = Math.max(0.6 * hole, cup.armMm() + draw.normal(Spread.ARM));
        double inside = cup.insideDiameterMm() + draw.normal(Spread.INSIDE);
        double oval = draw.normal(0.1);
        double below = draw.within(0, Spread.BELOW_MOST);
        Turning edge = new Turning(arm + hole / 2, below);
        double footArm = key.stop().armMm() * (1 + draw.normal(Spread.FOOT_ARM_SHARE));
        Turning foot = new Turning(footArm, draw.within(0, Spread.BELOW_MOST));
        double front = cup.heightFrontMm() + draw.normal(Spread.FACTORY_HEIGHT);
        List<VirtualLayer> layers = layers(key, draw);
        double built = layers.stream().mapToDouble(VirtualLayer::built).sum();
        return new VirtualCup(
                cup,
                key,
                hole,
                arm,
                inside + oval,
                inside - oval,
                cup.depthMm() + depthOff + draw.normal(Spread.DEPTH_CUP),
                cup.parallelGapMm() + gapOff + draw.normal(Spread.GAP_CUP),
                draw.within(Spread.SEAT_LEAST, Spread.SEAT_MOST),
                draw.normal(Spread.SIDE_TILT) / hole,
                Rim.of(wave(draw, 2, Spread.RIM_TWO), wave(draw, 3, Spread.RIM_THREE), wave(draw, 2, Spread.FACE_TWO)),
                cup.seatStiffnessMPa() * (1 + draw.normal(Spread.STIFFNESS_SHARE / 2)),
                draw.within(Spread.PLAY_LEAST, Spread.PLAY_MOST),
                closing(cup, key, arm),
                edge,
                new Turning(arm, below),
                foot,
                built + foot.lift(edge.rotation(front)),
                layers,
                draw.normal(Spread.OLD_PAD),
                front);
    }

    /** Holes differ in proportion as well as in millimetres: a vent does not differ by a third of itself. */
    private static double share(Draw draw, double sd, Keywork pattern, Cup cup) {
        double hole = pattern.holeOf(cup).diameterMm();
        return draw.normal(Math.min(sd / hole, 0.1));
    }

    /** A light finger on an open key; its own spring on one that rests shut. */
    private static double closing(Cup cup, Key key, double arm) {
        return cup.rest() == Rest.OPEN
                ? Hand.LIGHT_N
                : Math.max(Hand.LIGHT_N, key.spring().torqueNmm() / arm);
    }

    private static Rim.Wave wave(Draw draw, int round, double most) {
        return new Rim.Wave(round, draw.within(0, most), draw.within(0, 2 * Math.PI));
    }

    /** Old cork is 3 to 10, old felt 5 to 20 in 100 thinner; one piece in three is a later repair of some thickness. */
    private static List<VirtualLayer> layers(Key key, Draw draw) {
        List<VirtualLayer> layers = new ArrayList<>();
        double off = draw.normal(Spread.FOOT);
        int count = key.stop().layers().size();
        for (Layer layer : key.stop().layers()) {
            double built = Math.max(0.3, layer.thicknessMm() + off / count);
            boolean felt = layer.material().contains("felt");
            double packed = felt ? draw.within(0.05, 0.2) : draw.within(0.03, 0.1);
            boolean later = draw.within(0, 1) < 0.34;
            double now = later ? built * draw.within(0.75, 1.25) : built * (1 - packed);
            double lose = felt ? draw.within(0.1, 0.25) : draw.within(0.03, 0.1);
            layers.add(new VirtualLayer(layer, built, now, lose));
        }
        return layers;
    }
}
