package hornwright.bench.plan.origin;

import hornwright.bench.archive.Grade;
import hornwright.bench.plan.Built;
import hornwright.bench.plan.Found;
import hornwright.bench.survey.Condition;
import hornwright.bench.survey.Originality;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What may be said of one place, from the eye at the bench and the archive together. Best first. */
public enum Verdict {
    /** Judged original, and of the material horns near this serial had. */
    BORNE_OUT(true),
    /** Judged original; nobody has shown what the factory used there. */
    JUDGED(true),
    /** Judged original; what the factory used there is contested or refuted. */
    CONTESTED(true),
    /** Judged original, but horns near this serial had another material. */
    DOUBTED(true),
    /** Not judged; of the material horns near this serial had. */
    AGREES(false),
    /** Not judged, and nothing to hold it against. */
    UNTOLD(false),
    /** Not judged; of another material than horns near this serial had. */
    DIFFERS(false),
    /** Judged a later repair. */
    LATER(false),
    MISSING(false);

    private final boolean judgedOriginal;

    Verdict(boolean judgedOriginal) {
        this.judgedOriginal = judgedOriginal;
    }

    public boolean isJudgedOriginal() {
        return judgedOriginal;
    }

    static Verdict of(Built built, Found found) {
        if (found.originality() == Originality.MISSING || found.condition() == Condition.MISSING) {
            return MISSING;
        }
        if (found.originality() == Originality.LATER) {
            return LATER;
        }
        boolean original = found.originality() == Originality.ORIGINAL;
        Grade grade = built.grade();
        if (!speaks(grade) || found.material() == null || built.material() == null) {
            return original ? (disputed(grade) ? CONTESTED : JUDGED) : UNTOLD;
        }
        boolean same = Objects.equals(built.material(), found.material());
        if (original) {
            return same ? BORNE_OUT : DOUBTED;
        }
        return same ? AGREES : DIFFERS;
    }

    /** Whether the archive says enough to hold a piece against it. */
    private static boolean speaks(@Nullable Grade grade) {
        return grade != null && grade.isAtLeast(Grade.INDICATED);
    }

    private static boolean disputed(@Nullable Grade grade) {
        return grade == Grade.CONTESTED || grade == Grade.REFUTED;
    }
}
