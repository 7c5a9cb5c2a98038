package hornwright.desk.web.feel;

import hornwright.bench.feel.TouchCurve;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Place;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.bounce.BounceChapter;
import hornwright.bench.plan.bounce.Bounced;
import hornwright.bench.plan.feel.FeelAnswer;
import hornwright.bench.plan.feel.FeelAnswer.Finger;
import hornwright.bench.plan.seat.SeatAnswer;
import hornwright.desk.drawing.Graph;
import hornwright.desk.drawing.Graph.At;
import hornwright.desk.drawing.Graph.Axis;
import hornwright.desk.drawing.Lever;
import hornwright.desk.drawing.Showing;
import hornwright.desk.drawing.Standing;
import hornwright.desk.paper.LeverSheet;
import hornwright.desk.paper.SheetHead;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import hornwright.engines.action.Trace;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;

/** Writes one key from the side, for the page and for the sheet. */
public final class LeverRows {
    private static final Set<NumberName> OF_THE_KEY = EnumSet.of(
            NumberName.DIAMETER,
            NumberName.THICKNESS,
            NumberName.CHOSEN_THICKNESS,
            NumberName.FLOAT,
            NumberName.PARALLEL_GAP,
            NumberName.HEIGHT_NOW,
            NumberName.HEIGHT_TARGET,
            NumberName.HEIGHT_SETTLED,
            NumberName.CUT_FULL,
            NumberName.RATIO,
            NumberName.WIRE);

    /** One drawn curve with what goes beside it. */
    private record Drawn(String title, String says, Graph graph, List<Figure> figures) {}

    private final OnBench bench;
    private final Key key;
    private final FeelAnswer feel;
    private final BounceChapter.Answer bounce;
    private final Optional<SeatAnswer> seat;
    private final long houseSeq;

    public LeverRows(
            OnBench bench,
            Key key,
            FeelAnswer feel,
            BounceChapter.Answer bounce,
            List<SeatAnswer> seats,
            long houseSeq) {
        this.bench = bench;
        this.key = key;
        this.feel = feel;
        this.bounce = bounce;
        this.seat = bench.keywork()
                .cupOf(key)
                .flatMap(cup ->
                        seats.stream().filter(one -> one.cup().equals(cup.id())).findFirst());
        this.houseSeq = houseSeq;
    }

    public LeverPage page(Frame frame) {
        return new LeverPage(
                frame,
                Next.of(bench),
                name(key),
                bench.address("lever/" + key.id() + "/sheet.pdf"),
                Lever.of(bench.keywork(), key).screen(showing()),
                figures(),
                drawn().map(one -> new LeverPage.Curve(
                                one.title(), one.says(), one.graph().screen(), one.figures()))
                        .toList(),
                seat.map(one -> ClosingRows.remedies(bench, one)).orElse(List.of()),
                new TryRows(bench.id(), bounce).all(),
                bounce.keys().isEmpty() ? "" : bench.address("lever/" + key.id() + "/counted"),
                houseSeq,
                UUID.randomUUID().toString(),
                bench.keywork().keys().stream()
                        .map(other -> new LeverPage.Other(
                                name(other),
                                bench.address("lever/" + other.id()),
                                other.id().equals(key.id())))
                        .toList());
    }

    public LeverSheet sheet(SheetHead head) {
        return new LeverSheet(
                head.title(),
                head.line(),
                name(key) + ", from the side",
                hornwright.desk.paper.Figure.of(Lever.of(bench.keywork(), key).print(showing())),
                Stream.concat(drawn().flatMap(one -> one.figures().stream()), figures().stream())
                        .map(figure -> new LeverSheet.Fact(OnBench.capital(figure.label()), written(figure)))
                        .toList(),
                drawn().map(one -> new LeverSheet.Captioned(
                                one.title(),
                                hornwright.desk.paper.Figure.of(one.graph().print())))
                        .toList());
    }

    private static String written(Figure figure) {
        String value = figure.window().isEmpty() ? figure.value() : figure.window();
        String sure = figure.uncertainty().isEmpty() || !figure.window().isEmpty() ? "" : " ± " + figure.uncertainty();
        return (value + sure + " " + figure.unit() + " " + figure.at()).strip();
    }

    private static String name(Key key) {
        return OnBench.capital(key.name().display());
    }

    /** Its materials as they are planned. */
    private Showing showing() {
        return place -> new Showing.Shown(
                bench.planned(place)
                        .flatMap(planned -> Optional.ofNullable(planned.material()))
                        .orElse(place.asBuilt().material()),
                Standing.AS_BUILT);
    }

    /** What the plan says of the cup's and the key's places, each name once. */
    private List<Figure> figures() {
        Optional<Cup> cup = bench.keywork().cupOf(key);
        Stream<Place> ofCup = cup.stream().flatMap(each -> bench.padOf(each).stream());
        Map<NumberName, PlannedNumber> numbers = new LinkedHashMap<>();
        Stream.concat(ofCup, bench.keywork().placesOf(key).stream())
                .flatMap(place -> bench.planned(place).stream())
                .flatMap(planned -> planned.numbers().entrySet().stream())
                .filter(entry -> OF_THE_KEY.contains(entry.getKey()))
                .forEach(entry -> numbers.putIfAbsent(entry.getKey(), entry.getValue()));
        return numbers.entrySet().stream()
                .map(entry -> figure(OnBench.capital(label(entry.getKey(), cup.isPresent())), entry.getValue()))
                .toList();
    }

    private static String label(NumberName name, boolean cup) {
        return name == NumberName.THICKNESS && cup ? "pad " + name.label() : name.label();
    }

    private Stream<Drawn> drawn() {
        return Stream.of(seat.map(this::seated), touch(), settling()).flatMap(Optional::stream);
    }

    private Drawn seated(SeatAnswer one) {
        double most = one.round().stream()
                .flatMap(round -> round.gapsMm().stream())
                .max(Double::compare)
                .orElse(0.0);
        Graph graph = new Graph(
                "Gap round the rim of " + one.name() + " at a light touch",
                new Axis("o'clock; 12 is away from the hinge", 0, 12),
                Axis.holding("mm", Math.max(0.05, most)));
        for (SeatAnswer.Round round : one.round()) {
            List<At> points = new ArrayList<>();
            for (int i = 0; i < round.gapsMm().size(); i++) {
                points.add(new At(
                        12.0 * i / (round.gapsMm().size() - 1), round.gapsMm().get(i)));
            }
            if (round.padClass() == one.pad().is()) {
                graph.curve(points);
            } else {
                graph.beside(points);
            }
        }
        List<Figure> figures = new ArrayList<>(ClosingRows.figures(bench, one));
        return new Drawn(
                "Seat",
                (one.rimRead() ? "On the rim as it was read" : "On a rim as rims are; nobody has measured this one")
                        + ": the gap a light touch leaves with a %s pad; broken, with one of the other classes."
                                .formatted(one.pad().is().word()),
                graph,
                figures);
    }

    private Optional<Drawn> touch() {
        return feel.finger(key.id()).map(finger -> {
            TouchCurve curve = TouchCurve.of(feel.action(), key, finger.force().value());
            double most = curve.points().stream()
                    .mapToDouble(TouchCurve.Point::newtons)
                    .max()
                    .orElse(1);
            Graph graph = new Graph(
                            "Force on the " + key.name().display() + " touch along its travel",
                            Axis.holding("mm down at the touch", curve.mostMm()),
                            Axis.holding("N", most))
                    .curve(curve.points().stream()
                            .map(point -> new At(point.travelMm(), point.newtons()))
                            .toList());
            band(finger)
                    .ifPresent(band -> graph.wanted(
                            band.least().value(),
                            Math.min(
                                    band.most().value(), Axis.holding("N", most).to())));
            travel(curve, finger.force().value())
                    .ifPresent(at -> graph.spot(at, finger.force().value(), "does its work"));
            return new Drawn(
                    "Touch",
                    "Force along the travel of the touch; the pale field is what this shop calls usual.",
                    graph,
                    Stream.concat(
                                    Stream.of(figure("at the touch", finger.force())),
                                    finger.wires().stream()
                                            .map(wire -> figure("with " + wire.sizeWord(), wire.force())))
                            .toList());
        });
    }

    private Optional<FeelAnswer.Band> band(Finger finger) {
        return feel.hands().stream()
                .filter(hand -> hand.fingers().contains(finger))
                .map(FeelAnswer.Hand::band)
                .findFirst();
    }

    private static Optional<Double> travel(TouchCurve curve, double newtons) {
        return curve.points().stream()
                .filter(point -> point.newtons() >= newtons)
                .map(TouchCurve.Point::travelMm)
                .findFirst();
    }

    private Optional<Drawn> settling() {
        return bounce.keys().stream()
                .filter(one -> one.what().startsWith("as planned"))
                .findFirst()
                .map(planned -> {
                    double most = opened(planned.trace()).stream()
                            .mapToDouble(At::y)
                            .max()
                            .orElse(1);
                    double until = Math.max(40, 1.3 * planned.settled().value());
                    Graph graph = new Graph(
                            "Height of the " + key.name().display() + " cup after the key is let go",
                            Axis.holding("ms after letting go", until),
                            Axis.holding("mm at the cup", most));
                    graph.curve(opened(planned.trace()));
                    Optional<Bounced> built =
                            bounce.keys().stream().filter(Bounced::period).findFirst();
                    built.filter(one -> differs(one, planned)).ifPresent(one -> graph.beside(opened(one.trace())));
                    return new Drawn(
                            "Let go",
                            "Pressed shut and let go: the cup rises to its stop and comes to rest; broken, as built, where"
                                    + " that differs.",
                            graph,
                            List.of(
                                    figure("opens in", planned.opening()),
                                    figure("comes back by", planned.rebound()),
                                    figure("quiet after", planned.settled())));
                });
    }

    /** Whether two ways of coming to rest can be told apart on a drawing. */
    private static boolean differs(Bounced one, Bounced other) {
        return Math.abs(one.settled().value() - other.settled().value())
                        > 0.03 * other.settled().value()
                || Math.abs(one.rebound().value() - other.rebound().value()) > 0.05;
    }

    private static List<At> opened(Trace trace) {
        List<At> points = new ArrayList<>();
        trace.points().forEach(point -> points.add(new At(1e3 * point.time(), 1e3 * point.opened())));
        points.add(new At(1e6, 1e3 * trace.points().getLast().opened()));
        return points;
    }

    private Figure figure(String label, PlannedNumber number) {
        return Figure.of(bench.id(), label, number);
    }
}
