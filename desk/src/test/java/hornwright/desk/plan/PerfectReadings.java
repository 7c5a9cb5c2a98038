package hornwright.desk.plan;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Layer;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.stock.Stock;
import hornwright.bench.stock.StockItem;
import hornwright.bench.stock.StockKind;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.TrialVerdict;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** What a restorer without error would read on a horn that is exactly as its keywork says. */
final class PerfectReadings {
    private static final double SURE = 0.001;

    private final Keywork keywork;
    private final List<Reading> readings = new ArrayList<>();

    private PerfectReadings(Keywork keywork) {
        this.keywork = keywork;
    }

    /**
     * @param stackOff how much thicker the trial stack is than what lands level
     * @param packed share of its thickness the foot has lost
     */
    static PlanInputs of(Keywork keywork, double stackOff, double packed) {
        PerfectReadings perfect = new PerfectReadings(keywork);
        for (Cup cup : keywork.cups()) {
            perfect.cup(cup, stackOff);
            perfect.height(cup, packed);
        }
        return PlanInputs.of(keywork).withReadings(perfect.readings).withStock(everyPad(keywork));
    }

    private void cup(Cup cup, double stackOff) {
        mm(ReadingKind.CUP_INSIDE, cup.id(), "along the hinge", cup.insideDiameterMm());
        mm(ReadingKind.CUP_INSIDE, cup.id(), "across the hinge", cup.insideDiameterMm());
        mm(ReadingKind.CUP_DEPTH, cup.id(), "", cup.depthMm());
        mm(ReadingKind.HOLE, cup.hole(), "", keywork.holeOf(cup).diameterMm());
        mm(ReadingKind.AXIS_TO_CENTRE, cup.id(), "", cup.armMm());
        double stack = cup.depthMm() + cup.parallelGapMm() + stackOff;
        add(ReadingKind.TRIAL_PAD, cup.id(), "", trial(cup, stack, stackOff));
    }

    /** By similar triangles from the edge that touches: a second way to what the plan reckons back. */
    private Observed.TrialPad trial(Cup cup, double stack, double off) {
        double radius = keywork.holeOf(cup).radiusMm();
        double touches = off >= 0 ? cup.armMm() - radius : cup.armMm() + radius;
        double opposite = off >= 0 ? cup.armMm() + radius : cup.armMm() - radius;
        double turned = off / touches;
        double gap = opposite * turned - off;
        TrialVerdict verdict =
                off == 0 ? TrialVerdict.LEVEL : off > 0 ? TrialVerdict.BACK_FIRST : TrialVerdict.FRONT_FIRST;
        return new Observed.TrialPad(stack, verdict, Math.abs(gap), SURE);
    }

    private void height(Cup cup, double packed) {
        Key key = keywork.keyOf(cup);
        double now = 0;
        for (Layer layer : key.stop().layers()) {
            boolean foot = layer.equals(key.stop().layers().getFirst());
            double thickness = layer.thicknessMm() * (foot ? 1 - packed : 1);
            mm(ReadingKind.THICKNESS, layer.place(), "", thickness);
            now += thickness;
        }
        double turned = (key.stop().clearanceMm() - now) / key.stop().armMm();
        double radius = keywork.holeOf(cup).radiusMm();
        mm(ReadingKind.FRONT_HEIGHT, cup.id(), "", (cup.armMm() + radius) * turned);
        mm(ReadingKind.AXIS_TO_FOOT, key.id(), "", key.stop().armMm());
    }

    private void mm(ReadingKind kind, String of, String point, double value) {
        add(kind, of, point, Observed.Amount.mm(value, SURE));
    }

    private void add(ReadingKind kind, String of, String point, Observed observed) {
        Reading bare = Reading.of("r." + readings.size(), kind, of, observed);
        readings.add(new Reading(
                bare.id(),
                kind,
                of,
                point,
                observed,
                bare.instrument(),
                bare.raw(),
                bare.who(),
                bare.when(),
                bare.stage(),
                bare.series()));
    }

    /** One pad of each size of the horn in every thickness the maker used. */
    private static Stock everyPad(Keywork keywork) {
        List<Double> thicknesses = keywork.cups().stream()
                .map(cup -> cup.pad().thicknessMm())
                .distinct()
                .toList();
        List<StockItem> items = new ArrayList<>();
        keywork.cups().stream()
                .map(cup -> cup.pad().diameterMm())
                .distinct()
                .forEach(diameter -> IntStream.range(0, thicknesses.size())
                        .forEach(i -> items.add(new StockItem(
                                "pad-" + diameter + "-" + i,
                                StockKind.PAD,
                                "any",
                                diameter,
                                thicknesses.get(i),
                                1,
                                null))));
        return new Stock(items);
    }
}
