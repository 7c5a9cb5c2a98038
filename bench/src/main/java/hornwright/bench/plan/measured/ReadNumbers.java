package hornwright.bench.plan.measured;

import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.rules.Rule;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Turns readings into numbers: each with the uncertainty it states, else that of its instrument by the shop's rule. */
public final class ReadNumbers {
    private final ShopRules rules;
    private final Reasons reasons;

    public ReadNumbers(ShopRules rules, Reasons reasons) {
        this.rules = rules;
        this.reasons = reasons;
    }

    /** The mean of readings of amounts; empty when there are none. */
    public Optional<PlannedNumber> mean(String id, String rule, List<Reading> readings) {
        List<PlannedNumber> numbers =
                readings.stream().flatMap(r -> amount(r).stream()).toList();
        if (numbers.size() < 2) {
            return numbers.stream().findFirst();
        }
        List<Because.Input> inputs = IntStream.range(0, numbers.size())
                .mapToObj(i -> Because.Input.of("reading " + (i + 1), numbers.get(i)))
                .toList();
        String unit = numbers.getFirst().unit();
        PlannedNumber mean = reasons.derive(id, rule, unit, ReadNumbers::mean, inputs);
        boolean one = readings.stream().map(Reading::instrument).distinct().count() == 1;
        return Optional.of(one ? withItsZero(mean, numbers) : mean);
    }

    /** Readings with one instrument share its zero, a part of its uncertainty that no repeating averages out. */
    private PlannedNumber withItsZero(PlannedNumber mean, List<PlannedNumber> numbers) {
        double common = rules.value("u.zero-share");
        double whole = numbers.stream().mapToDouble(PlannedNumber::u).average().orElse(0);
        double u = Math.hypot(mean.u() * Math.sqrt(1 - common * common), common * whole);
        return new PlannedNumber(mean.value(), mean.unit(), u, mean.because(), null, null, null);
    }

    public Optional<PlannedNumber> amount(Reading reading) {
        return reading.observed() instanceof Observed.Amount amount
                ? Optional.of(number(
                        reading,
                        amount.value(),
                        amount.unit().symbol(),
                        amount.u() == null ? instrument(reading, amount.unit()) : amount.u()))
                : Optional.empty();
    }

    /** One millimetre figure out of a reading that says more than one. */
    public PlannedNumber part(Reading reading, String what, double valueMm, @Nullable Double u) {
        String id = "reading " + reading.id() + ", " + what;
        double sure = u == null ? instrument(reading, Unit.MILLIMETRE) : u;
        String says = "%s of %s: %s".formatted(reading.kind().word(), reading.of(), what);
        return reasons.leaf(new Because.FromReading(id, says, reading.id(), reading.instrument()), valueMm, "mm", sure);
    }

    private PlannedNumber number(Reading reading, double value, String unit, double u) {
        String point = reading.point().isEmpty() ? "" : ", " + reading.point();
        String says = "%s of %s%s".formatted(reading.kind().word(), reading.of(), point);
        Because.Leaf leaf =
                new Because.FromReading("reading " + reading.id(), says, reading.id(), reading.instrument());
        return reasons.leaf(leaf, value, unit, u);
    }

    /** One standard uncertainty of an instrument; an instrument without a rule of its own has the common one. */
    private double instrument(Reading reading, Unit unit) {
        return rules.find(rule(reading.instrument(), unit))
                .or(() -> rules.find(rule("other", unit)))
                .orElseThrow(() -> new IllegalStateException("nobody says how sure a reading in %s is".formatted(unit)))
                .value();
    }

    /** The shop rule of an instrument, in the unit it reads. */
    private static String rule(String instrument, Unit unit) {
        return "u." + instrument.replace(' ', '-') + "_" + unit.symbol().replace("/", "_per_");
    }

    /** The instruments the shop has a rule for, by what their readings are in. */
    public static List<String> instruments(ShopRules rules, Unit unit) {
        String suffix = rule("", unit).substring(2);
        return rules.all().stream()
                .map(Rule::id)
                .filter(id -> id.startsWith("u.") && id.endsWith(suffix))
                .map(id -> id.substring(2, id.length() - suffix.length()).replace('-', ' '))
                .toList();
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }
}
