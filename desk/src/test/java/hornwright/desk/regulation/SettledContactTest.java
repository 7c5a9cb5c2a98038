package hornwright.desk.regulation;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.regulation.SettledContact;
import hornwright.bench.survey.Chronicle;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Happening;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.WorkDone;
import hornwright.bench.survey.WorkKind;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.List;
import org.junit.jupiter.api.Test;

class SettledContactTest {
    private static final Keywork ALTO = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
    private static final Decision.Contact TAKE = new Decision.Contact("link.d-to-f-sharp", -0.08, "by the leaf");
    private static final Decision.Contact TURN = new Decision.Contact("link.f-sharp-to-bis", -0.08, "by the leaf");

    private static Happening felt(String id, String press) {
        return new Happening.Measured(new Reading(
                id,
                ReadingKind.LINKED_GAP,
                "cup.f-sharp",
                "pressing " + press,
                Observed.Amount.mm(0.05),
                "thin leaf",
                "",
                "",
                null,
                Stage.HEIGHTS_SET,
                null));
    }

    private static List<SettledContact> after(Happening... course) {
        return SettledContact.of(
                PlanInputs.of(ALTO).withDecisions(List.of(TAKE, TURN)).withChronicle(new Chronicle(List.of(course))));
    }

    private static Happening settled(Decision decision) {
        return new Happening.Settled(decision);
    }

    @Test
    void what_was_felt_before_it_was_settled_leaves_it_standing() {
        assertThat(after(felt("r.1", "d"), settled(TAKE), settled(TURN)))
                .extracting(SettledContact::words)
                .containsExactly("take 0.08 mm", "turn the screw out by 0.20 turns, 0.08 mm");
        assertThat(after(felt("r.1", "d"), settled(TAKE), settled(TURN))).allMatch(one -> one.stale() == null);
    }

    @Test
    void felt_again_it_no_longer_stands_where_that_finger_works_and_nowhere_else() {
        List<SettledContact> contacts = after(settled(TAKE), settled(TURN), felt("r.2", "e"));
        assertThat(contacts.getFirst().stale()).isNull();
        assertThat(contacts.getLast().stale()).isEqualTo("felt again with E pressed");
    }

    @Test
    void a_reading_taken_back_is_as_good_as_a_new_one() {
        assertThat(after(felt("r.1", "d"), settled(TAKE), settled(TURN), new Happening.Withdrawn("r.1")))
                .extracting(SettledContact::stale)
                .containsOnly("what was felt with D pressed was taken back");
    }

    @Test
    void a_bent_arm_under_it_ends_it_but_another_contact_of_the_round_does_not() {
        WorkDone bent = new WorkDone("w.1", WorkKind.ARM_BENT, "f-sharp", null);
        WorkDone cut = new WorkDone("w.2", WorkKind.LINK_CHANGED, "link.e-to-f-sharp", null);
        assertThat(after(settled(TAKE), settled(TURN), new Happening.Worked(bent)))
                .extracting(SettledContact::stale)
                .containsOnly("F♯: arm bent");
        assertThat(after(settled(TAKE), settled(TURN), new Happening.Worked(cut)))
                .allMatch(one -> one.stale() == null);
    }

    @Test
    void settled_once_more_it_stands_again() {
        assertThat(after(settled(TAKE), settled(TURN), felt("r.2", "d"), settled(TAKE)))
                .extracting(SettledContact::stale)
                .containsExactly("felt again with D pressed", null);
    }
}
