package hornwright.bench.plan.orders;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.PadCentreKind;
import hornwright.bench.plan.ClassOfPad;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.OrderLine;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.pads.PadAnswer;
import hornwright.bench.plan.treatment.PlaceTreatment;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.stock.Stock;
import hornwright.bench.stock.StockKind;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.PadClass;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The pads to have, by diameter, thickness and centre; largest first. A cup nobody has measured has no line. */
public final class PadOrders {
    private record Sort(
            double diameter,
            String thickness,
            @Nullable Double exact,
            String material,
            String centre,
            String padClass,
            boolean open) {
        /** On the shelf a pad of a chosen class is told by its material: "kid leather, soft". */
        boolean isOf(String shelved) {
            String plain = padClass.isEmpty() ? shelved : shelved.replaceFirst(",? " + padClass + "$", "");
            boolean known = padClass.isEmpty() || padClass.equals(PadClass.USUAL.word()) || !plain.equals(shelved);
            return known && (material.isEmpty() || plain.equals(material));
        }
    }

    private final Keywork keywork;
    private final Map<String, PlaceTreatment> treatments;
    private final List<Decision> decisions;
    private final Stock stock;
    private final ShopRules rules;

    public PadOrders(
            Keywork keywork,
            Map<String, PlaceTreatment> treatments,
            List<Decision> decisions,
            Stock stock,
            ShopRules rules) {
        this.keywork = keywork;
        this.treatments = treatments;
        this.decisions = List.copyOf(decisions);
        this.stock = stock;
        this.rules = rules;
    }

    /** @param pads answers by cup id */
    public List<OrderLine> lines(Map<String, PadAnswer> pads) {
        Map<Sort, List<String>> sorts = new LinkedHashMap<>();
        for (Cup cup : keywork.cups()) {
            PadAnswer pad = pads.get(cup.id());
            PlaceTreatment treatment = treatments.get("pad." + cup.hole());
            if (pad != null && treatment != null && treatment.mayNeedNew()) {
                Sort sort = sort(cup, pad, treatment);
                if (sort != null) {
                    sorts.computeIfAbsent(sort, none -> new ArrayList<>()).add(pad.place());
                }
            }
        }
        List<OrderLine> lines = new ArrayList<>();
        sorts.forEach((sort, places) -> lines.add(line(sort, places)));
        lines.sort(Comparator.comparingDouble((OrderLine line) -> line.diameterMm() == null ? 0 : line.diameterMm())
                .reversed());
        return withSpares(lines);
    }

    private @Nullable Sort sort(Cup cup, PadAnswer pad, PlaceTreatment treatment) {
        PlannedNumber diameter = pad.number(NumberName.DIAMETER).orElse(null);
        PlannedNumber wanted = pad.number(NumberName.THICKNESS).orElse(null);
        if (diameter == null || wanted == null) {
            return null;
        }
        PlannedNumber chosen = pad.number(NumberName.CHOSEN_THICKNESS).orElse(null);
        return new Sort(
                diameter.value(),
                ThicknessClass.words(chosen, wanted),
                chosen == null ? null : chosen.value(),
                treatment.material() == null ? "" : treatment.material(),
                centre(cup),
                padClass(cup),
                chosen == null || pad.provisional() != null || treatment.provisional());
    }

    private String padClass(Cup cup) {
        ClassOfPad pad = ClassOfPad.of(decisions, cup.id());
        return pad.settled() ? pad.is().word() : "";
    }

    private static String centre(Cup cup) {
        PadCentreKind kind = cup.centre().kind();
        return switch (kind) {
            case RESONATOR, RIVET ->
                String.format(
                        Locale.ROOT,
                        "%s %.1f mm, %s",
                        kind.word(),
                        cup.centre().diameterMm(),
                        cup.centre().material());
            case STITCHED, BARE -> kind.word();
        };
    }

    private OrderLine line(Sort sort, List<String> places) {
        return new OrderLine(
                StockKind.PAD,
                sort.material(),
                sort.diameter(),
                sort.exact(),
                sort.thickness(),
                sort.centre(),
                sort.padClass(),
                places.size(),
                0,
                onShelf(sort),
                sort.open(),
                places);
    }

    private int onShelf(Sort sort) {
        return stock.of(StockKind.PAD)
                .filter(pad -> sort.isOf(pad.material()))
                .filter(pad -> same(pad.diameterMm(), sort.diameter()))
                .filter(pad -> sort.exact() != null && same(pad.thicknessMm(), sort.exact()))
                .mapToInt(pad -> pad.count())
                .sum();
    }

    private static boolean same(@Nullable Double one, double other) {
        return one != null && Math.abs(one - other) < 1e-6;
    }

    /** The shop's share of all, at least one, given to the sorts needed most often. */
    private List<OrderLine> withSpares(List<OrderLine> lines) {
        int need = lines.stream().mapToInt(OrderLine::need).sum();
        double share = rules.value("spares.share");
        int spares = need == 0 || share == 0 ? 0 : Math.max(1, (int) Math.round(need * share));
        List<OrderLine> commonest = lines.stream()
                .sorted(Comparator.comparingInt(OrderLine::need).reversed())
                .limit(spares)
                .toList();
        return lines.stream()
                .map(line -> commonest.contains(line) ? withSpare(line) : line)
                .toList();
    }

    private static OrderLine withSpare(OrderLine line) {
        return new OrderLine(
                line.kind(),
                line.material(),
                line.diameterMm(),
                line.thicknessMm(),
                line.thicknessWords(),
                line.centre(),
                line.padClass(),
                line.need(),
                1,
                line.onShelf(),
                line.provisional(),
                line.places());
    }
}
