package hornwright.desk.virtual;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Rest;
import hornwright.bench.plan.Missing;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.Planner;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.stock.Stock;
import hornwright.bench.stock.StockItem;
import hornwright.bench.stock.StockKind;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Chronicle;
import hornwright.bench.survey.Condition;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.GroupFinding;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Originality;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.TrialVerdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is read on a virtual horn: in ten minutes, in an hour, or of everything the plan can use. */
final class Survey {
    /** How long the horn was looked at. */
    enum Length {
        TEN_MINUTES,
        /** The hour of the example job: sizes everywhere, trial pads on the stacks. */
        HOUR,
        /** Ten minutes, and then fifty more spent on what the plan asks for next. */
        HOUR_AS_ASKED,
        FULL
    }

    private static final int TEN_MINUTE_HEIGHTS = 10;
    private static final int GROUP_THICKNESSES = 5;
    private static final int SECONDS_AFTER_TEN_MINUTES = 50 * 60;

    private final VirtualHorn horn;
    private final ShopRules rules;
    private final Instruments with;
    private final Draw draw;
    private final List<Reading> readings = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final Map<String, GroupFinding> groups = new LinkedHashMap<>();

    private Survey(VirtualHorn horn, ShopRules rules) {
        this.horn = horn;
        this.rules = rules;
        this.with = new Instruments(rules, horn.seed());
        this.draw = Draw.of(horn.seed(), "survey");
    }

    static PlanInputs of(VirtualHorn horn, Length length, ShopRules rules) {
        Survey survey = new Survey(horn, rules);
        survey.look(length);
        if (length == Length.HOUR_AS_ASKED) {
            survey.answer(Planner.plan(survey.inputs()).missing());
        }
        return survey.inputs();
    }

    private PlanInputs inputs() {
        return new PlanInputs(
                horn.pattern(),
                null,
                AgreedUse.WORKING,
                Stage.ARRIVAL,
                readings,
                findings,
                List.copyOf(groups.values()),
                List.of(),
                List.of(),
                Chronicle.NONE,
                Map.of(),
                shelf(horn),
                rules);
    }

    private void look(Length length) {
        horn.cups().forEach(this::inside);
        horn.cups().stream()
                .filter(cup -> cup.cup().rest() == Rest.OPEN)
                .limit(length == Length.FULL ? horn.cups().size() : TEN_MINUTE_HEIGHTS)
                .forEach(this::height);
        if (length == Length.TEN_MINUTES || length == Length.HOUR_AS_ASKED) {
            horn.cups().forEach(this::group);
            return;
        }
        for (VirtualCup cup : horn.cups()) {
            sizes(cup);
            found(cup);
            if (length == Length.FULL || stacked(cup)) {
                trial(cup);
            }
            if (length == Length.FULL) {
                foot(cup);
            }
        }
    }

    /** What the plan misses, most useful first, until the hour is over. */
    private void answer(List<Missing> missing) {
        int left = SECONDS_AFTER_TEN_MINUTES;
        for (Missing wish : missing) {
            if (left >= wish.seconds()) {
                left -= wish.seconds();
                answer(wish);
            }
        }
    }

    private void answer(Missing wish) {
        ReadingKind kind = wish.kind();
        for (VirtualCup cup : horn.cups()) {
            String key = cup.key().id();
            boolean here = List.of(cup.cup().id(), cup.cup().hole(), key).contains(wish.of());
            if (kind == null && cup.key().group().word().equals(wish.of())) {
                found(cup);
            } else if (kind != null && here) {
                take(kind, cup);
            }
        }
    }

    private void take(ReadingKind kind, VirtualCup cup) {
        switch (kind) {
            case CUP_DEPTH -> depth(cup);
            case HOLE -> hole(cup);
            case AXIS_TO_CENTRE -> arm(cup);
            case FRONT_HEIGHT -> height(cup);
            case TRIAL_PAD -> trial(cup);
            case TRIAL_SHIM -> shim(cup);
            default -> {}
        }
    }

    private boolean stacked(VirtualCup cup) {
        KeyGroup group = cup.key().group();
        return cup.cup().rest() == Rest.OPEN && (group == KeyGroup.LOWER_STACK || group == KeyGroup.UPPER_STACK);
    }

    private void inside(VirtualCup cup) {
        mm(ReadingKind.CUP_INSIDE, cup.cup().id(), "along the hinge", with.caliper(cup.insideAlong()));
        mm(ReadingKind.CUP_INSIDE, cup.cup().id(), "across the hinge", with.caliper(cup.insideAcross()));
    }

    /** One look over a group, with one thickness of it while there is time. */
    private void group(VirtualCup cup) {
        for (VirtualLayer layer : cup.layers()) {
            String kind = layer.layer().place().replaceFirst("\\..*", "");
            String group = cup.key().group().word();
            boolean measured = groups.size() < GROUP_THICKNESSES;
            groups.computeIfAbsent(
                    group + " " + kind,
                    id -> new GroupFinding(
                            id,
                            group,
                            kind,
                            layer.layer().material(),
                            List.of(),
                            0,
                            measured ? Draw.read(with.caliper(layer.now()), 0.1) : null,
                            null));
        }
    }

    private void sizes(VirtualCup cup) {
        depth(cup);
        hole(cup);
        arm(cup);
    }

    private void depth(VirtualCup cup) {
        mm(ReadingKind.CUP_DEPTH, cup.cup().id(), "", with.depthRod(cup.depth()));
    }

    private void hole(VirtualCup cup) {
        mm(ReadingKind.HOLE, cup.cup().hole(), "", with.caliper(cup.hole()));
    }

    private void arm(VirtualCup cup) {
        mm(ReadingKind.AXIS_TO_CENTRE, cup.cup().id(), "", with.rule(cup.arm()));
    }

    private void height(VirtualCup cup) {
        mm(ReadingKind.FRONT_HEIGHT, cup.cup().id(), "", with.wedge(cup.frontAsFound()));
    }

    /** Looked at one by one and found hard, so that a new one is planned. */
    private void found(VirtualCup cup) {
        for (VirtualLayer layer : cup.layers()) {
            findings.add(new Finding(
                    layer.layer().place(),
                    layer.layer().material(),
                    with.caliper(layer.now()),
                    null,
                    Condition.HARD,
                    Originality.UNKNOWN,
                    null,
                    null));
        }
    }

    /** A dry stack of about what the model took, let down on the rim as it is, waves and all. */
    private void trial(VirtualCup cup) {
        Cup pattern = cup.cup();
        double stack = Draw.read(pattern.depthMm() + pattern.parallelGapMm(), 0.1);
        double really = stack + draw.within(-Spread.PAD_THICKNESS, Spread.PAD_THICKNESS);
        Rim.Pad pad =
                new Rim.Pad(cup.radius(), cup.arm(), really - cup.floorToRim(), 0, cup.sideTilt(), cup.stiffness());
        double[] gaps = cup.rim().gapsAtFirstTouch(pad);
        boolean backFirst = gaps[0] > gaps[1];
        double felt = with.feeler(backFirst ? gaps[0] : gaps[1]);
        boolean level = felt < rules.value("trial.level_mm");
        TrialVerdict verdict =
                level ? TrialVerdict.LEVEL : backFirst ? TrialVerdict.BACK_FIRST : TrialVerdict.FRONT_FIRST;
        add(ReadingKind.TRIAL_PAD, pattern.id(), "", new Observed.TrialPad(stack, verdict, level ? 0 : felt, null));
    }

    /** Metal to metal at the foot, where the foot is, and a shim of a millimetre. */
    private void foot(VirtualCup cup) {
        mm(ReadingKind.FOOT_CLEARANCE, cup.key().id(), "", with.feeler(cup.clearance()));
        mm(ReadingKind.AXIS_TO_FOOT, cup.key().id(), "", with.rule(cup.foot().arm()));
        shim(cup);
    }

    private void shim(VirtualCup cup) {
        double shimmed = cup.front(cup.now() + 1) - cup.oldPad();
        Observed.TrialShim shim = new Observed.TrialShim(1, with.wedge(cup.frontAsFound()), with.wedge(shimmed), null);
        add(ReadingKind.TRIAL_SHIM, cup.key().id(), "", shim);
    }

    private void mm(ReadingKind kind, String of, String point, double value) {
        add(kind, of, point, Observed.Amount.mm(value));
    }

    private void add(ReadingKind kind, String of, String point, Observed observed) {
        String id = "r." + readings.size();
        readings.add(
                new Reading(id, kind, of, point, observed, kind.usualInstrument(), "", "", null, Stage.ARRIVAL, null));
    }

    /** Every pad of the sizes of this model and a millimetre about, in every thickness the shop keeps. */
    private static Stock shelf(VirtualHorn horn) {
        List<StockItem> items = new ArrayList<>();
        for (VirtualCup cup : horn.cups()) {
            for (double thickness : Padding.SHELF) {
                double diameter = Draw.read(cup.inside(), 0.5);
                items.add(new StockItem(
                        "pad-" + cup.cup().hole() + "-" + thickness,
                        StockKind.PAD,
                        "pad",
                        diameter,
                        thickness,
                        2,
                        null));
            }
        }
        return new Stock(items);
    }
}
