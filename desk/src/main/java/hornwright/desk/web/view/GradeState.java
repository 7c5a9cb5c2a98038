package hornwright.desk.web.view;

import hornwright.bench.archive.Grade;

/** A grade as a page writes it: its own word, with the icon of the state it is nearest to. */
public final class GradeState {
    private GradeState() {}

    public static State of(Grade grade) {
        String icon = switch (grade) {
            case ESTABLISHED, WELL_SUPPORTED -> "done";
            case INDICATED, REPORTED -> "planned";
            case NOT_ASSESSED -> "missing";
            case CONTESTED, REFUTED -> "contested";
        };
        return new State(icon, grade.letter() + " · " + grade.word());
    }
}
