package hornwright.bench.plan.orders;

import hornwright.bench.plan.OrderLine;
import hornwright.bench.stock.StockKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Pads are ordered twice: their diameters on day one, so that none is missing; their thickness only after key fit and
 * trial pad, when it is known (bench judgement). Everything else is ordered once.
 *
 * @param diameters on day one, largest first
 * @param settled pads whose thickness is chosen
 * @param waiting pads whose thickness still waits
 * @param once cork, felt and all else
 */
public record OrderStages(
        List<Diameter> diameters, List<OrderLine> settled, List<OrderLine> waiting, List<OrderLine> once) {
    /**
     * All pads of one diameter.
     *
     * @param need for this horn, without spares
     * @param sorts into how many sorts they fall once thickness and middle are settled
     */
    public record Diameter(double mm, int need, int spares, int sorts, List<String> places) {
        public Diameter {
            places = List.copyOf(places);
        }
    }

    public OrderStages {
        diameters = List.copyOf(diameters);
        settled = List.copyOf(settled);
        waiting = List.copyOf(waiting);
        once = List.copyOf(once);
    }

    public static OrderStages of(List<OrderLine> orders) {
        Map<Double, Diameter> byDiameter = new LinkedHashMap<>();
        List<OrderLine> settled = new ArrayList<>();
        List<OrderLine> waiting = new ArrayList<>();
        List<OrderLine> once = new ArrayList<>();
        for (OrderLine line : orders) {
            Double mm = line.diameterMm();
            if (line.kind() != StockKind.PAD || mm == null) {
                once.add(line);
                continue;
            }
            byDiameter.merge(mm, new Diameter(mm, line.need(), line.spares(), 1, line.places()), OrderStages::together);
            (line.provisional() ? waiting : settled).add(line);
        }
        List<Diameter> diameters = byDiameter.values().stream()
                .sorted(Comparator.comparingDouble(Diameter::mm).reversed())
                .toList();
        return new OrderStages(diameters, settled, waiting, once);
    }

    private static Diameter together(Diameter one, Diameter other) {
        List<String> places = new ArrayList<>(one.places());
        places.addAll(other.places());
        return new Diameter(
                one.mm(),
                one.need() + other.need(),
                one.spares() + other.spares(),
                one.sorts() + other.sorts(),
                places);
    }
}
