package hornwright.desk.web.horn;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.feel.FeelAnswer;
import hornwright.bench.plan.feel.FeelAnswer.Finger;
import hornwright.desk.units.Shown;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.Written;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** One number for each place that has it, its colour in five steps from the least on this horn to the most. */
public final class NumberLayer {
    private static final int STEPS = 5;

    private record Cell(String label, PlannedNumber number) {}

    private final Map<String, Cell> cells;
    private final double least;
    private final double most;

    private NumberLayer(Map<String, Cell> cells) {
        this.cells = cells;
        this.least = values().min(Double::compare).orElse(0.0);
        this.most = values().max(Double::compare).orElse(0.0);
    }

    public static NumberLayer sizes(OnBench bench) {
        return new NumberLayer(ofCups(bench, NumberName.DIAMETER));
    }

    /** The height wanted; where none is, the one that stands now or stood before. */
    public static NumberLayer heights(OnBench bench) {
        return new NumberLayer(
                ofCups(bench, NumberName.HEIGHT_TARGET, NumberName.HEIGHT_NOW, NumberName.HEIGHT_BEFORE));
    }

    /** The force at its touch, at the pad of a key or, where it has none, at what the finger meets. */
    public static NumberLayer forces(OnBench bench, FeelAnswer feel) {
        Map<String, Cell> cells = new LinkedHashMap<>();
        for (Key key : bench.keywork().keys()) {
            Optional<Finger> finger = feel.finger(key.id());
            Optional<Place> place = bench.keywork()
                    .cupOf(key)
                    .flatMap(bench::padOf)
                    .or(() -> bench.keywork().placesOf(key).stream()
                            .filter(one -> one.kind() == PlaceKind.PEARL || one.kind() == PlaceKind.ROLLER)
                            .findFirst());
            if (finger.isPresent() && place.isPresent()) {
                String ground = finger.get().read() ? "force at its touch" : "force at its touch, typical spring";
                cells.put(place.get().id(), new Cell(ground, finger.get().force()));
            }
        }
        return new NumberLayer(cells);
    }

    private static Map<String, Cell> ofCups(OnBench bench, NumberName... names) {
        Map<String, Cell> cells = new LinkedHashMap<>();
        for (Cup cup : bench.keywork().cups()) {
            Optional<Place> pad = bench.padOf(cup);
            for (NumberName name : names) {
                Optional<PlannedNumber> number = bench.numberOf(cup, name);
                if (pad.isPresent() && number.isPresent()) {
                    cells.putIfAbsent(pad.get().id(), new Cell(name.label(), number.get()));
                }
            }
        }
        return cells;
    }

    private Stream<Double> values() {
        return cells.values().stream().map(cell -> cell.number().value());
    }

    /** From 1 to 5; 0 where the place has no number. */
    public int depth(Place place) {
        Cell cell = cells.get(place.id());
        if (cell == null) {
            return 0;
        }
        double share = most > least ? (cell.number().value() - least) / (most - least) : 0;
        return Math.clamp((int) Math.floor(share * STEPS) + 1, 1, STEPS);
    }

    /** "18.4"; empty where the place has no number. */
    public String figure(Place place) {
        Cell cell = cells.get(place.id());
        return cell == null
                ? ""
                : Written.value(cell.number().value(), cell.number().u());
    }

    /** "pad diameter 18.4 ± 0.1 mm"; what is missing is said too. */
    public String inWords(Place place) {
        Cell cell = cells.get(place.id());
        if (cell == null) {
            return place.kind() == PlaceKind.PAD && place.belongsTo() instanceof Owner.OfCup ? "not known yet" : "";
        }
        PlannedNumber number = cell.number();
        String doubt = number.u() > 0 ? " ± " + Written.uncertainty(number.u()) : "";
        return "%s %s%s %s".formatted(cell.label(), figure(place), doubt, number.unit());
    }

    /** The steps in words, "9 to 15 mm"; empty when no place has a number. */
    public List<String> steps() {
        List<String> steps = new ArrayList<>();
        String unit = cells.values().stream()
                .map(cell -> cell.number().unit())
                .findFirst()
                .orElse("");
        for (int step = 0; step < STEPS && !cells.isEmpty(); step++) {
            steps.add("%s to %s %s".formatted(edge(step), edge(step + 1), unit));
        }
        return steps;
    }

    private String edge(int step) {
        double value = least + (most - least) * step / STEPS;
        return Shown.fixed(value, most - least < 2 ? 2 : most - least < 20 ? 1 : 0);
    }
}
