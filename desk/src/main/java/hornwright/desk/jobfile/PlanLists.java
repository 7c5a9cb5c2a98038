package hornwright.desk.jobfile;

import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.plan.CutLine;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.OrderLine;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.PlannedPlace;
import hornwright.bench.survey.Treatment;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The lists a bench takes to the shelf, as comma-separated values. */
public final class PlanLists {
    private PlanLists() {}

    /** What to have: pads, sheets, springs. */
    public static String orders(Plan plan) {
        Csv csv = new Csv(
                "goods",
                "material",
                "diameter_mm",
                "thickness_mm",
                "thickness",
                "centre",
                "need",
                "spares",
                "on_shelf",
                "to_order",
                "provisional",
                "places",
                "pad_class");
        for (OrderLine line : plan.orders()) {
            csv.row(
                    line.kind().word(),
                    line.material(),
                    Csv.hundredths(line.diameterMm()),
                    Csv.hundredths(line.thicknessMm()),
                    line.thicknessWords(),
                    line.centre(),
                    line.need(),
                    line.spares(),
                    line.onShelf(),
                    line.toOrder(),
                    line.provisional() ? "yes" : "no",
                    String.join(" ", line.places()),
                    line.padClass());
        }
        return csv.toString();
    }

    /** What is done to every place that does not simply stay; pieces to cut with their sizes. */
    public static String prep(Keywork keywork, Plan plan) {
        Map<String, CutLine> cuts = plan.cuts().stream().collect(Collectors.toMap(CutLine::place, Function.identity()));
        Csv csv = new Csv(
                "place",
                "name",
                "treatment",
                "material",
                "form",
                "cut_mm",
                "sheet_mm",
                "finish_mm",
                "finish_u_mm",
                "sand_mm",
                "method",
                "why");
        for (Place place : keywork.places()) {
            PlannedPlace planned = plan.place(place.id());
            if (planned.treatment() != Treatment.KEEP) {
                row(csv, place, planned, Optional.ofNullable(cuts.get(place.id())));
            }
        }
        return csv.toString();
    }

    private static void row(Csv csv, Place place, PlannedPlace planned, Optional<CutLine> cut) {
        csv.row(
                place.id(),
                place.display(),
                planned.treatment().word(),
                planned.material(),
                cut.map(line -> line.form().word()).orElse(null),
                value(cut.map(CutLine::cutMm).orElse(null)),
                value(cut.map(CutLine::sheetMm).orElse(null)),
                value(cut.map(CutLine::finishMm).orElse(null)),
                cut.map(CutLine::finishMm)
                        .map(PlannedNumber::u)
                        .map(Csv::hundredths)
                        .orElse(null),
                value(planned.number(NumberName.SAND).orElse(null)),
                cut.map(CutLine::method).orElse(null),
                planned.why());
    }

    private static @Nullable Double value(@Nullable PlannedNumber number) {
        return number == null ? null : Csv.hundredths(number.value());
    }
}
