package hornwright.desk.reckon;

import java.util.List;
import java.util.Optional;

/** All engines, in the order of the floor plan. */
public final class Engines {
    private static final List<Engine> ALL = List.of(
            new AirReckon(), //
            new SeatReckon(),
            new LinkageReckon(),
            new ActionReckon(),
            new SpringReckon(),
            new LeakReckon(),
            new BeliefReckon(),
            new UncertaintyReckon(),
            new PitchReckon());

    private Engines() {}

    public static List<Engine> all() {
        return ALL;
    }

    public static Optional<Engine> named(String name) {
        return ALL.stream().filter(engine -> engine.name().equals(name)).findFirst();
    }
}
