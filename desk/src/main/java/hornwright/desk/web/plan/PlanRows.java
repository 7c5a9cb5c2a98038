package hornwright.desk.web.plan;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Place;
import hornwright.bench.plan.CutLine;
import hornwright.bench.plan.HourLine;
import hornwright.bench.plan.Missing;
import hornwright.bench.plan.Money;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.OrderLine;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Warning;
import hornwright.bench.plan.orders.OrderStages;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.MissingPart;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.State;
import hornwright.desk.web.view.Written;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Writes the plan of one horn as rows. */
public final class PlanRows {
    private final OnBench bench;

    public PlanRows(OnBench bench) {
        this.bench = bench;
    }

    public PlanPage page(Frame frame, List<MissingPart> bare) {
        Money money = bench.plan().money();
        OrderStages stages = OrderStages.of(bench.plan().orders());
        return new PlanPage(
                frame,
                Next.of(bench),
                bench.id(),
                cautions(),
                bare,
                bench.keywork().cups().stream().map(this::pad).toList(),
                bench.plan().cuts().stream().map(this::cut).toList(),
                stages.diameters().stream().map(this::dayOne).toList(),
                Stream.concat(stages.settled().stream(), stages.waiting().stream())
                        .map(PlanRows::order)
                        .toList(),
                stages.once().stream().map(PlanRows::order).toList(),
                bench.plan().missing().stream().map(this::ask).toList(),
                costs(money),
                money.currency());
    }

    private PlanPage.PadRow pad(Cup cup) {
        Optional<Place> pad = bench.padOf(cup);
        List<Figure> thickness = figures(cup, NumberName.THICKNESS);
        return new PlanPage.PadRow(
                bench.heading(cup),
                pad.map(place -> bench.placeAddress(place.id())).orElse(""),
                figures(cup, NumberName.DIAMETER),
                thickness,
                figures(cup, NumberName.CHOSEN_THICKNESS),
                thickness.isEmpty() ? "measure it" : "",
                pad.flatMap(bench::planned).map(State::of).orElse(State.NOT_MEASURED));
    }

    private List<Figure> figures(Cup cup, NumberName name) {
        return bench.numberOf(cup, name).map(number -> Figure.of(bench.id(), name, number)).stream()
                .toList();
    }

    private PlanPage.CutRow cut(CutLine line) {
        return new PlanPage.CutRow(
                bench.keywork()
                        .places()
                        .find(line.place())
                        .map(place -> OnBench.capital(place.display()))
                        .orElse(line.place()),
                bench.placeAddress(line.place()),
                line.material(),
                line.form().word(),
                figure("cut at", line.cutMm()),
                figure("sheet", line.sheetMm()),
                figure("ends at", line.finishMm()),
                line.method());
    }

    private List<Figure> figure(String label, @Nullable PlannedNumber number) {
        return number == null ? List.of() : List.of(Figure.of(bench.id(), label, number));
    }

    private PlanPage.DayOne dayOne(OrderStages.Diameter diameter) {
        String places = diameter.places().stream()
                .flatMap(place -> bench.keywork().places().find(place).stream())
                .map(place -> place.display().replaceFirst(" pad$", ""))
                .reduce((first, second) -> first + ", " + second)
                .orElse("");
        String count = diameter.spares() == 0
                ? "" + diameter.need()
                : "%d and %d spare".formatted(diameter.need(), diameter.spares());
        return new PlanPage.DayOne(Written.plain(diameter.mm()) + " mm", count, places);
    }

    private static PlanPage.Order order(OrderLine line) {
        String size = Stream.of(
                        line.diameterMm() == null ? "" : Written.plain(line.diameterMm()) + " mm",
                        line.thicknessWords(),
                        line.centre(),
                        line.padClass())
                .filter(part -> !part.isEmpty())
                .reduce((first, second) -> first + ", " + second)
                .orElse("");
        return new PlanPage.Order(
                line.kind().word() + ", " + line.material(),
                size,
                line.spares() == 0 ? "" + line.need() : "%d and %d spare".formatted(line.need(), line.spares()),
                line.onShelf() == 0 ? "none" : "" + line.onShelf(),
                line.toOrder() == 0 ? "nothing" : "" + line.toOrder(),
                line.provisional() ? "may still change" : "");
    }

    private PlanPage.Ask ask(Missing missing) {
        return new PlanPage.Ask(
                OnBench.capital(missing.measure()),
                String.join(", ", missing.decides()),
                missing.seconds() == 0 ? "" : "about %d s".formatted(missing.seconds()),
                Next.address(bench, missing));
    }

    private List<PlanPage.Caution> cautions() {
        Map<Warning.Sort, List<String>> bySort = new EnumMap<>(Warning.Sort.class);
        for (Warning warning : bench.plan().warnings()) {
            bySort.computeIfAbsent(warning.sort(), none -> new ArrayList<>()).add(warning.words());
        }
        return bySort.entrySet().stream()
                .map(entry -> new PlanPage.Caution(entry.getKey().word(), entry.getValue()))
                .toList();
    }

    private List<PlanPage.Cost> costs(Money money) {
        Stream<PlanPage.Cost> lines = money.lines().stream().map(this::cost);
        Stream<PlanPage.Cost> totals = Stream.of(
                        total("All hours", money.hours()), total("Goods", money.parts()), total("Cost", money.cost()))
                .filter(Objects::nonNull);
        return Stream.concat(lines, totals).toList();
    }

    private PlanPage.Cost cost(HourLine line) {
        return new PlanPage.Cost(line.words(), figure(line.words(), line.hours()));
    }

    private PlanPage.@Nullable Cost total(String words, @Nullable PlannedNumber number) {
        return number == null ? null : new PlanPage.Cost(words, figure(words, number));
    }
}
