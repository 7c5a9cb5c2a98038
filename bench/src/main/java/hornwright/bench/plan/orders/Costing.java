package hornwright.bench.plan.orders;

import hornwright.bench.horn.Voice;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.HourLine;
import hornwright.bench.plan.Money;
import hornwright.bench.plan.OrderLine;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.rules.Rule;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.stock.Stock;
import hornwright.bench.stock.StockItem;
import hornwright.bench.stock.StockKind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Hours and money as ranges: the least and the most of every part of the work, added up. */
public final class Costing {
    private static final String LEAST = ".least_h";
    private static final String MOST = ".most_h";

    private final Voice voice;
    private final ShopRules rules;
    private final Stock stock;
    private final Reasons reasons;

    public Costing(Voice voice, ShopRules rules, Stock stock, Reasons reasons) {
        this.voice = voice;
        this.rules = rules;
        this.stock = stock;
        this.reasons = reasons;
    }

    public Money of(List<OrderLine> orders) {
        PlannedNumber parts = orders.isEmpty() ? null : parts(orders);
        Optional<PlannedNumber> share = share();
        if (share.isEmpty()) {
            return new Money(List.of(), null, parts, null, rules.currency());
        }
        List<HourLine> lines = rules.all().stream()
                .filter(rule -> rule.id().startsWith("hours.") && rule.id().endsWith(LEAST))
                .map(rule -> line(rule, share.get()))
                .toList();
        PlannedNumber hours = hours(lines);
        return new Money(lines, hours, parts, cost(hours, parts), rules.currency());
    }

    /** What a voice takes of the hours of an alto; nobody has hours for the others. */
    private Optional<PlannedNumber> share() {
        return switch (voice) {
            case ALTO ->
                Optional.of(reasons.leaf(
                        new Because.CommonPractice("alto hours", "the hours of the rules are those of an alto"),
                        1,
                        "",
                        0));
            case TENOR -> Optional.of(reasons.rule(rules, "hours.tenor-share"));
            case SOPRANO, BARITONE -> Optional.empty();
        };
    }

    private HourLine line(Rule rule, PlannedNumber share) {
        String stage = rule.id().substring("hours.".length(), rule.id().length() - LEAST.length());
        PlannedNumber least = reasons.rule(rules, rule.id());
        PlannedNumber most = reasons.rule(rules, "hours." + stage + MOST);
        PlannedNumber hours = between(
                "hours/" + stage,
                "between the fewest and the most hours x share of an alto",
                "h",
                least.value() * share.value(),
                most.value() * share.value(),
                List.of(
                        Because.Input.of("fewest", least),
                        Because.Input.of("most", most),
                        Because.Input.of("share of an alto", share)));
        int colon = rule.says().indexOf(": ");
        return new HourLine(stage, colon < 0 ? rule.says() : rule.says().substring(colon + 2), hours);
    }

    private PlannedNumber hours(List<HourLine> lines) {
        double low = lines.stream().mapToDouble(line -> low(line.hours())).sum();
        double high = lines.stream().mapToDouble(line -> high(line.hours())).sum();
        return between(
                "hours",
                "fewest hours added up to most hours added up",
                "h",
                low,
                high,
                lines.stream()
                        .map(line -> Because.Input.of(line.words(), line.hours()))
                        .toList());
    }

    private PlannedNumber parts(List<OrderLine> orders) {
        List<Because.Input> inputs = new ArrayList<>();
        double sum = 0;
        for (OrderLine line : orders) {
            PlannedNumber price = price(line);
            int pieces = line.need() + line.spares();
            sum += price.value() * pieces;
            inputs.add(Because.Input.of(pieces + " x " + line.kind().word(), price));
        }
        double total = sum;
        return reasons.derive("parts", "pieces x price, added up", rules.currency(), in -> total, inputs);
    }

    private PlannedNumber price(OrderLine line) {
        Optional<StockItem> same = stock.of(line.kind())
                .filter(item -> item.price() != null && item.material().equals(line.material()))
                .filter(item -> sameSize(item.diameterMm(), line.diameterMm())
                        && (line.thicknessMm() == null || sameSize(item.thicknessMm(), line.thicknessMm())))
                .findFirst();
        BigDecimal price = same.map(StockItem::price).orElse(null);
        if (same.isPresent() && price != null) {
            String id = same.get().id();
            return reasons.leaf(
                    new Because.FromStock("price of " + id, "price of " + id + " on the shelf", id),
                    price.doubleValue(),
                    rules.currency(),
                    0);
        }
        return reasons.rule(rules, line.kind() == StockKind.PAD ? "price.pad" : "price.piece");
    }

    private static boolean sameSize(@Nullable Double one, @Nullable Double other) {
        if (one == null || other == null) {
            return one == null && other == null;
        }
        return Math.abs(one - other) < 1e-6;
    }

    private PlannedNumber cost(PlannedNumber hours, @Nullable PlannedNumber parts) {
        PlannedNumber hour = reasons.rule(rules, "price.hour");
        PlannedNumber reserve = reasons.rule(rules, "price.reserve-share");
        double goods = parts == null ? 0 : parts.value();
        List<Because.Input> inputs = new ArrayList<>(List.of(
                Because.Input.of("hours", hours),
                Because.Input.of("price of an hour", hour),
                Because.Input.of("reserve", reserve)));
        if (parts != null) {
            inputs.add(Because.Input.of("parts", parts));
        }
        return between(
                "cost",
                "fewest hours x price + parts, up to most hours x price + parts and the reserve on it",
                rules.currency(),
                low(hours) * hour.value() + goods,
                (high(hours) * hour.value() + goods) * (1 + reserve.value()),
                inputs);
    }

    /** Anything between two ends is as likely: the middle, with the spread of an even distribution. */
    private PlannedNumber between(
            String id, String rule, String unit, double low, double high, List<Because.Input> inputs) {
        double middle = (low + high) / 2;
        PlannedNumber number = reasons.derive(id, rule, unit, in -> middle, inputs);
        return new PlannedNumber(middle, unit, (high - low) / Math.sqrt(12), number.because(), low, high, null);
    }

    private static double low(PlannedNumber hours) {
        Double low = hours.low();
        return low == null ? hours.value() : low;
    }

    private static double high(PlannedNumber hours) {
        Double high = hours.high();
        return high == null ? hours.value() : high;
    }
}
