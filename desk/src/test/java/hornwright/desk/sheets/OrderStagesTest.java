package hornwright.desk.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.plan.OrderLine;
import hornwright.bench.plan.Planner;
import hornwright.bench.plan.orders.OrderStages;
import hornwright.bench.survey.ReadingKind;
import java.util.List;
import org.junit.jupiter.api.Test;

class OrderStagesTest {
    @Test
    void day_one_asks_for_every_measured_diameter_and_claims_no_thickness() {
        OrderStages stages = OrderStages.of(orders(measured()));
        assertThat(stages.diameters().stream()
                        .mapToInt(OrderStages.Diameter::need)
                        .sum())
                .isEqualTo(Asking.ALTO.cups().size());
        assertThat(stages.settled()).isEmpty();
        assertThat(stages.waiting()).isNotEmpty().allMatch(line -> line.thicknessMm() == null);
        assertThat(stages.diameters()).isSortedAccordingTo((a, b) -> Double.compare(b.mm(), a.mm()));
    }

    @Test
    void every_order_line_stands_in_exactly_one_stage() {
        List<OrderLine> orders = orders(measured());
        OrderStages stages = OrderStages.of(orders);
        assertThat(stages.settled().size()
                        + stages.waiting().size()
                        + stages.once().size())
                .isEqualTo(orders.size());
        assertThat(stages.diameters().stream().flatMap(one -> one.places().stream()))
                .doesNotHaveDuplicates();
    }

    private static List<OrderLine> orders(Asking asking) {
        return Planner.plan(asking.inputs()).orders();
    }

    private static Asking measured() {
        Asking asking = Asking.alto();
        Asking.ALTO.cups().forEach(cup -> {
            asking.mm(ReadingKind.CUP_INSIDE, cup.id(), "along the hinge", cup.insideDiameterMm());
            asking.mm(ReadingKind.CUP_INSIDE, cup.id(), "across the hinge", cup.insideDiameterMm());
        });
        return asking;
    }
}
