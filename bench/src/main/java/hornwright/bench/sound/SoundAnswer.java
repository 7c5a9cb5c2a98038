package hornwright.bench.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Fingering;
import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.sound.HeightOffer.Step;
import hornwright.bench.survey.PlayTest;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How the horn plays and what would bring it nearer. Cents of notes are from their place with the common part taken off.
 *
 * @param basis the play test everything starts from; null when the horn was never played, and then all else is empty
 * @param common what all notes share
 * @param notes every note that was played, in the order of the keywork
 * @param restored how many cups the plan puts to another height than the horn was played with
 * @param accepted heights a person settled that the basis was not yet played with
 * @param offered heights that would help, from those the plan wants: the factory's unless a person settled others
 * @param left notes outside the band with all of that done
 * @param fitted mouthpiece and bore as the tuning tells them; null from fewer notes than it takes
 */
public record SoundAnswer(
        @Nullable PlayTest basis,
        @Nullable PlannedNumber common,
        List<NoteLine> notes,
        int restored,
        List<ChangeLine> accepted,
        List<ChangeLine> offered,
        List<LeftLine> left,
        @Nullable Fitted fitted,
        Known known,
        Becauses becauses) {
    public SoundAnswer {
        notes = List.copyOf(notes);
        accepted = List.copyOf(accepted);
        offered = List.copyOf(offered);
        left = List.copyOf(left);
    }

    /**
     * One note.
     *
     * @param played cents as it was heard
     * @param planned cents with the heights the plan wants, the factory's or accepted ones; null when it stays as played
     * @param predicted cents with the offered heights too; null when none of them moves it
     * @param perMm the cups that move it most, cents for each millimetre at the front edge, strongest first
     */
    public record NoteLine(
            Fingering fingering,
            PlannedNumber played,
            @Nullable PlannedNumber planned,
            @Nullable PlannedNumber predicted,
            List<PerMm> perMm) {
        public NoteLine {
            perMm = List.copyOf(perMm);
        }

        /** Where it will be when nothing that is offered is accepted. */
        public PlannedNumber before() {
            return planned == null ? played : planned;
        }

        /** Where it will be with everything done. */
        public PlannedNumber then() {
            return predicted == null ? before() : predicted;
        }
    }

    /** What a cup does to a note. */
    public record PerMm(Cup cup, PlannedNumber cents) {}

    /**
     * One cup to another height, at the front edge.
     *
     * @param why of an accepted one; empty of an offer
     * @param moved the notes it moves
     */
    public record ChangeLine(Cup cup, PlannedNumber from, PlannedNumber to, String why, List<Moved> moved) {
        public ChangeLine {
            moved = List.copyOf(moved);
        }
    }

    /**
     * A note a change moves.
     *
     * @param cents by how much that cup alone moves it, about
     * @param before cents with none of the changes made
     * @param after cents with all of them made
     */
    public record Moved(Fingering fingering, PlannedNumber cents, double before, double after, Harm harm) {}

    /** A note heights do not bring home, and what to look at instead. */
    public record LeftLine(Fingering fingering, PlannedNumber cents, List<Step> ladder) {
        public LeftLine {
            ladder = List.copyOf(ladder);
        }
    }

    /**
     * Mouthpiece and bore as the tuning tells them.
     *
     * @param volume mouthpiece and reed, cm³
     * @param neck how much wider than the pattern at the neck end, in hundredths
     * @param middle the same half way
     * @param bell the same at the bell
     * @param unexplained what the fit leaves, cents
     */
    public record Fitted(
            PlannedNumber volume,
            PlannedNumber neck,
            PlannedNumber middle,
            PlannedNumber bell,
            PlannedNumber unexplained) {}

    /**
     * Which cups of the air column were measured on this horn; the pattern stands for the others.
     *
     * @param heights whose front height was read
     * @param holes whose hole was
     * @param arms whose axis to centre was
     */
    public record Known(List<Cup> heights, List<Cup> holes, List<Cup> arms) {
        public Known {
            heights = List.copyOf(heights);
            holes = List.copyOf(holes);
            arms = List.copyOf(arms);
        }
    }
}
