package hornwright.bench.plan.orders;

import hornwright.bench.horn.Form;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Layer;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.plan.CutLine;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.OrderLine;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.heights.CutFull;
import hornwright.bench.plan.treatment.PlaceTreatment;
import hornwright.bench.stock.StockKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The pieces of cork, felt and tubing to cut, in the order of the keywork, and the sheets the shelf lacks for them. */
public final class CutList {
    private static final double SHEET_STEP_MM = 0.5;

    private final Keywork keywork;
    private final Map<String, PlaceTreatment> treatments;
    private final Map<String, Form> forms = new HashMap<>();

    public CutList(Keywork keywork, Map<String, PlaceTreatment> treatments) {
        this.keywork = keywork;
        this.treatments = treatments;
        Stream.concat(
                        keywork.keys().stream().flatMap(key -> layers(key)),
                        keywork.links().stream().map(Link::layers).flatMap(List::stream))
                .forEach(layer -> forms.put(layer.place(), layer.form()));
    }

    /** @param numbers by place */
    public List<CutLine> lines(Map<String, Map<NumberName, PlannedNumber>> numbers) {
        return keywork.places().stream()
                .filter(place -> method(place.kind()) != null)
                .filter(place -> treatment(place).mayNeedNew() || change(place, numbers) != null)
                .map(place -> line(place, numbers.getOrDefault(place.id(), Map.of())))
                .toList();
    }

    private CutLine line(Place place, Map<NumberName, PlannedNumber> numbers) {
        String material = treatment(place).material();
        return new CutLine(
                place.id(),
                material == null ? "" : material,
                forms.getOrDefault(place.id(), Form.STRIP),
                numbers.get(NumberName.CUT_FULL),
                numbers.get(NumberName.SHEET),
                numbers.get(NumberName.THICKNESS),
                settled(numbers.get(NumberName.CHANGE), Objects.requireNonNull(method(place.kind())), place.kind()));
    }

    /** A link whose change was settled says so instead of the usual way. */
    private static String settled(@Nullable PlannedNumber change, String usual, PlaceKind kind) {
        if (change == null || kind != PlaceKind.LINK) {
            return usual;
        }
        return String.format(
                Locale.ROOT,
                change.value() < 0
                        ? "take %.2f off what lies there; check by the gauge"
                        : "add %.2f to what lies there: a new piece, or line it; check by the gauge",
                Math.abs(change.value()));
    }

    private static @Nullable PlannedNumber change(Place place, Map<String, Map<NumberName, PlannedNumber>> numbers) {
        return place.kind() == PlaceKind.LINK
                ? numbers.getOrDefault(place.id(), Map.of()).get(NumberName.CHANGE)
                : null;
    }

    private PlaceTreatment treatment(Place place) {
        return Objects.requireNonNull(treatments.get(place.id()));
    }

    /** How a piece of this kind comes to its end; null for places that carry no cut piece. */
    private static @Nullable String method(PlaceKind kind) {
        return switch (kind) {
            case FOOT, GUARD, BUMPER, UPPER_STOP -> "cut full, sand down to the height";
            case LINK -> "cut full, sand until both close together";
            case SLEEVE, SADDLE, GUIDE, ROCKER_CONTACT -> "fit so that it neither rattles nor drags";
            case NECK_CORK -> "cut full, sand to the mouthpiece";
            default -> null;
        };
    }

    /** Sheets nothing on the shelf is thick enough for, one line a material and thickness. */
    public static List<OrderLine> sheetsToOrder(List<CutLine> cuts) {
        record Sheet(StockKind kind, String material, double atLeast) {}
        Map<Sheet, List<String>> lacking = new LinkedHashMap<>();
        for (CutLine cut : cuts) {
            PlannedNumber full = cut.cutMm();
            if (cut.sheetMm() == null && full != null && !cut.material().isEmpty()) {
                double step = Math.ceil(full.value() / SHEET_STEP_MM - 1e-9) * SHEET_STEP_MM;
                Sheet sheet = new Sheet(CutFull.kinds(cut.material()).getFirst(), cut.material(), step);
                lacking.computeIfAbsent(sheet, none -> new ArrayList<>()).add(cut.place());
            }
        }
        List<OrderLine> lines = new ArrayList<>();
        lacking.forEach((sheet, places) -> lines.add(new OrderLine(
                sheet.kind(),
                sheet.material(),
                null,
                sheet.atLeast(),
                String.format(Locale.ROOT, "%.1f", sheet.atLeast()),
                "",
                "",
                1,
                0,
                0,
                false,
                places)));
        return lines;
    }

    private static Stream<Layer> layers(Key key) {
        return key.stops().stream().flatMap(stop -> stop.layers().stream());
    }
}
