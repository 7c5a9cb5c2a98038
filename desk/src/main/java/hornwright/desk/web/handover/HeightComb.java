package hornwright.desk.web.handover;

import hornwright.bench.horn.Cup;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.desk.web.view.OnBench;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How far every cup stands open, side by side in bench order: a ring as it came, a pad as it is, a stroke where it is
 * wanted.
 *
 * @param rules where the millimetres lie that are ruled across
 * @param told the same in a sentence
 */
public record HeightComb(String viewBox, List<Rule> rules, List<Tooth> teeth, String told) {
    private static final double STEP = 50;
    private static final double TALL = 190;
    private static final double FOOT = 96;
    private static final double LEFT = 34;

    public HeightComb {
        rules = List.copyOf(rules);
        teeth = List.copyOf(teeth);
    }

    public record Rule(String y, String label) {}

    /** One cup; what is not known is empty. */
    public record Tooth(String name, String x, String before, String now, String wanted) {}

    public static HeightComb of(OnBench bench) {
        double most = bench.keywork().cups().stream()
                .flatMap(cup -> heights(bench, cup).stream())
                .mapToDouble(PlannedNumber::value)
                .max()
                .orElse(10);
        double top = Math.ceil(most / 2) * 2;
        List<Tooth> teeth = new ArrayList<>();
        int both = 0;
        for (Cup cup : bench.keywork().cups()) {
            double x = LEFT + STEP * (teeth.size() + 0.5);
            Optional<PlannedNumber> before = bench.numberOf(cup, NumberName.HEIGHT_BEFORE);
            Optional<PlannedNumber> now =
                    bench.job().readings().measuredAfter(Stage.ARRIVAL, ReadingKind.FRONT_HEIGHT, cup.id())
                            ? bench.numberOf(cup, NumberName.HEIGHT_NOW)
                            : Optional.empty();
            both += before.isPresent() && now.isPresent() ? 1 : 0;
            teeth.add(new Tooth(
                    bench.keywork().nameOf(cup).display(),
                    n(x),
                    y(before, top),
                    y(now, top),
                    y(bench.numberOf(cup, NumberName.HEIGHT_TARGET), top)));
        }
        List<Rule> rules = new ArrayList<>();
        for (int mm = 0; mm <= top; mm += 2) {
            rules.add(new Rule(n(TALL * (1 - mm / top) + 10), "" + mm));
        }
        return new HeightComb(
                "0 0 %s %s".formatted(n(LEFT + STEP * teeth.size() + 6), n(TALL + FOOT + 10)),
                rules,
                teeth,
                "%d of %d cups measured before and after".formatted(both, teeth.size()));
    }

    private static List<PlannedNumber> heights(OnBench bench, Cup cup) {
        return List.of(NumberName.HEIGHT_BEFORE, NumberName.HEIGHT_NOW, NumberName.HEIGHT_TARGET).stream()
                .flatMap(name -> bench.numberOf(cup, name).stream())
                .toList();
    }

    private static String y(Optional<PlannedNumber> number, double top) {
        return number.map(height -> n(TALL * (1 - height.value() / top) + 10)).orElse("");
    }

    private static String n(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
