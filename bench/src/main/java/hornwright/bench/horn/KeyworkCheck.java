package hornwright.bench.horn;

import java.util.List;

/**
 * Finds everything that makes a keywork impossible: parts that refer to nothing, a tube that cannot be, keys that jam with
 * nothing pressed, links that close each other in a circle. Files are read and variants derived through this check.
 */
public final class KeyworkCheck {
    private KeyworkCheck() {}

    /** All flaws; empty for a keywork that could stand on a bench. */
    public static List<Flaw> flaws(Keywork keywork) {
        Flaws flaws = new Flaws();
        ReferenceCheck.look(keywork, flaws);
        PlaceCheck.look(keywork, flaws);
        UseCheck.look(keywork, flaws);
        TubeCheck.look(keywork.tube(), flaws);
        if (flaws.isEmpty()) {
            // geometry and motion can only be judged once every reference leads somewhere
            CupCheck.look(keywork, flaws);
            RodCheck.look(keywork, flaws);
            MotionCheck.look(keywork, flaws);
            CircleCheck.look(keywork, flaws);
            ReachCheck.look(keywork, flaws);
        }
        return flaws.list();
    }
}
