package hornwright.bench.plan.orders;

import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.horn.SpringSection;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.OrderLine;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.treatment.PlaceTreatment;
import hornwright.bench.stock.Stock;
import hornwright.bench.stock.StockKind;
import hornwright.bench.survey.Treatment;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/** Springs like for like: only those there is cause to replace, by wire and material. */
public final class SpringOrders {
    private record Sort(StockKind kind, String material, double size) {}

    private SpringOrders() {}

    /** @param numbers by place */
    public static List<OrderLine> lines(
            Keywork keywork,
            Map<String, PlaceTreatment> treatments,
            Map<String, Map<NumberName, PlannedNumber>> numbers,
            Stock stock) {
        Map<Sort, List<String>> sorts = new LinkedHashMap<>();
        for (Place place : keywork.places().where(p -> p.kind() == PlaceKind.SPRING)) {
            PlaceTreatment treatment = Objects.requireNonNull(treatments.get(place.id()));
            PlannedNumber wire = numbers.getOrDefault(place.id(), Map.of()).get(NumberName.WIRE);
            boolean cause = treatment.mayNeedNew() && treatment.treatment() != Treatment.DECIDE;
            if (cause && wire != null && treatment.material() != null) {
                boolean needle =
                        keywork.keys().get(place.belongsTo().id()).spring().section() instanceof SpringSection.Needle;
                StockKind kind = needle ? StockKind.NEEDLE_SPRING : StockKind.FLAT_SPRING;
                sorts.computeIfAbsent(new Sort(kind, treatment.material(), wire.value()), none -> new ArrayList<>())
                        .add(place.id());
            }
        }
        List<OrderLine> lines = new ArrayList<>();
        sorts.forEach((sort, places) -> lines.add(line(sort, places, stock)));
        return lines;
    }

    private static OrderLine line(Sort sort, List<String> places, Stock stock) {
        boolean needle = sort.kind() == StockKind.NEEDLE_SPRING;
        int there = stock.of(sort.kind())
                .filter(item -> item.material().equals(sort.material()))
                .filter(item -> {
                    Double size = needle ? item.diameterMm() : item.thicknessMm();
                    return size != null && Math.abs(size - sort.size()) < 0.005;
                })
                .mapToInt(item -> item.count())
                .sum();
        return new OrderLine(
                sort.kind(),
                sort.material(),
                needle ? sort.size() : null,
                needle ? null : sort.size(),
                needle ? "" : String.format(Locale.ROOT, "%.2f", sort.size()),
                "",
                "",
                places.size(),
                0,
                there,
                false,
                places);
    }
}
