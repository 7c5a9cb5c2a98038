package hornwright.desk.drawing;

import hornwright.bench.archive.Course;
import hornwright.bench.archive.Kind;

/** How a look is marked on the ruler. */
public final class RulerMark {
    private static final int STRONG = 2;

    private RulerMark() {}

    /** A horn in the hand and a part nobody had reason to replace; everything else is drawn hollow. */
    public static boolean held(Course.Mark mark) {
        return mark.kind() == Kind.OBJECT && mark.strength() >= STRONG;
    }
}
