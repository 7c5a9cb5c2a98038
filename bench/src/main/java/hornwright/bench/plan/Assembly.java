package hornwright.bench.plan;

import hornwright.bench.horn.ById;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.plan.heights.HeightAnswer;
import hornwright.bench.plan.heights.StackSteps;
import hornwright.bench.plan.measured.Measurements;
import hornwright.bench.plan.measured.SwitchesRead;
import hornwright.bench.plan.order.OrderChapter;
import hornwright.bench.plan.orders.Costing;
import hornwright.bench.plan.orders.CutList;
import hornwright.bench.plan.orders.PadOrders;
import hornwright.bench.plan.orders.SpringOrders;
import hornwright.bench.plan.pads.PadAnswer;
import hornwright.bench.plan.treatment.LinkedPads;
import hornwright.bench.plan.treatment.MixedHorn;
import hornwright.bench.plan.treatment.PlaceTreatment;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Puts the answers of the chapters together into one plan. */
final class Assembly {
    private final PlanInputs inputs;
    private final Measurements measured;
    private final Map<String, PlaceTreatment> treated;
    private final Map<String, PadAnswer> pads;
    private final Chapter steps;
    private final Map<String, PadAnswer> padByPlace = new HashMap<>();
    private final Map<String, Map<NumberName, PlannedNumber>> numbers = new HashMap<>();
    private final Map<String, Because> becauses = new LinkedHashMap<>();
    private final Reasons reasons = new Reasons();

    Assembly(
            PlanInputs inputs,
            Measurements measured,
            Map<String, PlaceTreatment> treated,
            Map<String, PadAnswer> pads,
            Map<String, HeightAnswer> heights,
            Chapter contacts) {
        this.inputs = inputs;
        this.measured = measured;
        this.treated = treated;
        this.pads = pads;
        this.steps = StackSteps.of(inputs.keywork(), inputs.rules(), heights);
        pads.values().forEach(this::take);
        heights.values().forEach(this::take);
        take(contacts);
        take(steps);
    }

    Plan plan(OrderChapter order, List<Missing> missing) {
        CutList cutting = new CutList(inputs.keywork(), treated);
        List<CutLine> cuts = cutting.lines(numbers);
        List<OrderLine> goods = goods(cuts);
        Money money = new Costing(inputs.keywork().voice(), inputs.rules(), inputs.stock(), reasons).of(goods);
        becauses.putAll(reasons.table().byId());
        return new Plan(
                ById.of(inputs.keywork().places().stream()
                        .map(place -> place(Objects.requireNonNull(treated.get(place.id()))))
                        .toList()),
                order.steps(),
                order.removal(),
                missing,
                goods,
                cuts,
                warnings(),
                measured.stale(),
                money,
                List.of(),
                new Becauses(becauses));
    }

    private void take(PadAnswer pad) {
        padByPlace.put(pad.place(), pad);
        put(pad.place(), pad.numbers());
        becauses.putAll(pad.becauses().byId());
    }

    private void take(HeightAnswer height) {
        put(height.pad(), height.heights());
        if (height.foot() != null) {
            put(height.foot(), height.footNumbers());
        }
        becauses.putAll(height.becauses().byId());
    }

    private void take(Chapter chapter) {
        chapter.numbers().forEach(this::put);
        becauses.putAll(chapter.becauses().byId());
    }

    private void put(String place, Map<NumberName, PlannedNumber> more) {
        numbers.computeIfAbsent(place, none -> new LinkedHashMap<>()).putAll(more);
    }

    private PlannedPlace place(PlaceTreatment treatment) {
        PadAnswer pad = padByPlace.get(treatment.place());
        return new PlannedPlace(
                treatment.place(),
                treatment.built(),
                treatment.found(),
                treatment.treatment(),
                treatment.why(),
                treatment.material(),
                numbers.getOrDefault(treatment.place(), Map.of()),
                pad == null ? List.of() : pad.choices(),
                padClass(treatment),
                provisional(pad),
                pad == null ? List.of() : pad.advice());
    }

    private @Nullable ClassOfPad padClass(PlaceTreatment treatment) {
        Place place = inputs.keywork().places().get(treatment.place());
        return place.kind() == PlaceKind.PAD && place.belongsTo() instanceof Owner.OfCup cup
                ? ClassOfPad.of(inputs.decisions(), cup.id())
                : null;
    }

    private static @Nullable String provisional(@Nullable PadAnswer pad) {
        return pad == null ? null : pad.provisional();
    }

    private List<OrderLine> goods(List<CutLine> cuts) {
        List<OrderLine> goods = new ArrayList<>(
                new PadOrders(inputs.keywork(), treated, inputs.decisions(), inputs.stock(), inputs.rules())
                        .lines(pads));
        goods.addAll(CutList.sheetsToOrder(cuts));
        goods.addAll(SpringOrders.lines(inputs.keywork(), treated, numbers, inputs.stock()));
        return goods;
    }

    private List<Warning> warnings() {
        List<Warning> warnings =
                new ArrayList<>(SwitchesRead.warnings(inputs.keywork().switches(), inputs.readings()));
        warnings.addAll(MixedHorn.warnings(inputs.keywork(), inputs.findings(), inputs.readings(), inputs.decisions()));
        warnings.addAll(LinkedPads.warnings(inputs.keywork(), treated));
        pads.values().forEach(pad -> warnings.addAll(pad.warnings()));
        warnings.addAll(steps.warnings());
        return warnings;
    }
}
