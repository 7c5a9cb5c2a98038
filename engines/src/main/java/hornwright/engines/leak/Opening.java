package hornwright.engines.leak;

import java.util.List;

/** What the air gets out through, or what was seen of it. Lengths in m. */
public sealed interface Opening {

    /** A gap between two nearly parallel faces: as long as its arc, as high as its gap, as deep as the seat is wide. */
    record Slot(double arc, double gap, double seatWidth) {
        public Slot {
            if (!(arc >= 0) || !(gap >= 0) || !(seatWidth >= 0)) {
                throw new IllegalArgumentException("a slot has no negative side");
            }
        }
    }

    /** Slots side by side under the same pressure. */
    record Slots(List<Slot> slots) implements Opening {
        public Slots {
            slots = List.copyOf(slots);
        }
    }

    /** A round hole with a discharge coefficient, 0.61 for a sharp edge. */
    record Orifice(double diameter, double discharge) implements Opening {
        public Orifice {
            if (!(diameter > 0) || !(discharge > 0)) {
                throw new IllegalArgumentException("a hole has a diameter and a discharge above zero");
            }
        }
    }

    /** A closed volume (m³) whose overpressure fell between two values (Pa) in some seconds. */
    record Decay(double volume, double from, double to, double seconds) implements Opening {
        public Decay {
            if (!(volume > 0) || !(seconds > 0) || !(to >= 0) || !(from > to)) {
                throw new IllegalArgumentException("pressure falls, in a volume, in some time");
            }
        }
    }
}
