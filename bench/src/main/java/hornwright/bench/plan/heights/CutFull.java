package hornwright.bench.plan.heights;

import hornwright.bench.plan.Because;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.stock.Stock;
import hornwright.bench.stock.StockItem;
import hornwright.bench.stock.StockKind;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A piece is cut full and sanded down: how thick it is cut, from which sheet, and how much then comes off. */
public final class CutFull {
    private final ShopRules rules;
    private final Stock stock;
    private final Reasons reasons;

    public CutFull(ShopRules rules, Stock stock, Reasons reasons) {
        this.rules = rules;
        this.stock = stock;
        this.reasons = reasons;
    }

    /** A foot that is not well known is left on by twice its uncertainty, so that nearly none comes out too thin. */
    public PlannedNumber foot(String place, PlannedNumber wanted) {
        double leftOn = Math.max(rules.value("foot.cut-full_mm"), 2 * wanted.u());
        return reasons.derive(
                place + "/cutFull",
                "what it is expected to need + what is left on for sanding, at least twice its uncertainty",
                "mm",
                in -> in[0] + Math.max(in[1], leftOn),
                Because.Input.of("expected", wanted),
                Because.Input.of("left on", reasons.rule(rules, "foot.cut-full_mm")));
    }

    public PlannedNumber link(String place, PlannedNumber pattern) {
        return full(place, pattern, "link.full_mm");
    }

    private PlannedNumber full(String place, PlannedNumber expected, String rule) {
        return reasons.derive(
                place + "/cutFull",
                "what it is expected to need + what is left on for sanding",
                "mm",
                in -> in[0] + in[1],
                Because.Input.of("expected", expected),
                Because.Input.of("left on", reasons.rule(rules, rule)));
    }

    /** The thinnest stocked sheet of the material that is thick enough, and what comes off it down to what is wanted. */
    public void fromTheShelf(
            String place,
            @Nullable String material,
            PlannedNumber wanted,
            PlannedNumber full,
            Map<NumberName, PlannedNumber> numbers) {
        sheet(material, full.value()).ifPresent(sheet -> {
            numbers.put(NumberName.SHEET, sheet);
            PlannedNumber sand = reasons.derive(
                    place + "/sand",
                    "sheet - thickness wanted",
                    "mm",
                    in -> in[0] - in[1],
                    Because.Input.of("sheet", sheet),
                    Because.Input.of("thickness wanted", wanted));
            numbers.put(NumberName.SAND, sand);
            numbers.put(
                    NumberName.PULLS,
                    reasons.derive(
                            place + "/pulls",
                            "to sand off / what one pull takes",
                            "pulls",
                            in -> in[0] / in[1],
                            Because.Input.of("to sand off", sand),
                            Because.Input.of("one pull", reasons.rule(rules, "foot.pull_mm"))));
        });
    }

    public Optional<PlannedNumber> sheet(@Nullable String material, double atLeast) {
        if (material == null) {
            return Optional.empty();
        }
        Optional<StockItem> item = stock.nearestAbove(kinds(material), material, atLeast);
        return item.flatMap(found -> {
            Double thickness = found.thicknessMm();
            Because.Leaf leaf = new Because.FromStock(
                    "stock " + found.id(), found.kind().word() + " of " + found.material(), found.id());
            return thickness == null ? Optional.empty() : Optional.of(reasons.leaf(leaf, thickness, "mm", 0));
        });
    }

    /** The shelves a material lies on. */
    public static List<StockKind> kinds(String material) {
        String word = material.toLowerCase(Locale.ROOT);
        if (word.contains("tub")) {
            return List.of(StockKind.TUBING);
        }
        if (word.contains("felt")) {
            return List.of(StockKind.FELT_SHEET, StockKind.FELT_DISC);
        }
        return word.contains("cork")
                ? List.of(StockKind.CORK_SHEET, StockKind.NECK_CORK)
                : List.of(StockKind.CORK_SHEET, StockKind.FELT_SHEET);
    }
}
