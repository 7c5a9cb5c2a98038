package hornwright.bench.plan.heights;

import hornwright.bench.horn.Layer;
import hornwright.bench.survey.Reading;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One piece of material at a stop, as it is and as it is planned.
 *
 * @param readings of its thickness
 * @param foundMm thickness noted when it was found; null when not measured; 0 when missing
 * @param byGroup whether that thickness is of its group, so of no piece in particular
 * @param material planned; null when not known
 * @param renewed whether a new piece goes in, or may
 */
public record LayerNow(
        Layer layer,
        List<Reading> readings,
        @Nullable Double foundMm,
        boolean byGroup,
        @Nullable String material,
        boolean renewed) {
    public LayerNow {
        readings = List.copyOf(readings);
    }
}
