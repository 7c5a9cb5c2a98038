package hornwright.bench.horn;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything that turns as one piece: its hinge, stops, touch and spring. Rotation 0 is where the cup it serves is
 * closed; positive is open.
 */
public record Key(
        String id,
        TradeName name,
        KeyGroup group,
        Rest rest,
        String rod,
        Axis axis,
        Stop stop,
        @Nullable Stop closingStop,
        @Nullable Touch touch,
        Spring spring,
        double restRotationRad,
        double pressedRotationRad,
        HingeTube tube)
        implements Identified {
    /** Its stops, the one that ends opening first. */
    public List<Stop> stops() {
        return closingStop == null ? List.of(stop) : List.of(stop, closingStop);
    }
}
