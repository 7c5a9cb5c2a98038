package hornwright.desk.regulation;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.action.Action;
import hornwright.bench.regulation.FirstAssembly;
import hornwright.bench.rules.ShopRules;
import hornwright.desk.keyworkfile.KeyworkFile;
import org.junit.jupiter.api.Test;

class FirstAssemblyTest {
    private static final Action ALTO =
            Action.asBuilt(KeyworkFile.shipped("tarrant-loe-alto").orElseThrow());

    private static FirstAssembly cutTo(double contacts, double pads) {
        return FirstAssembly.of(
                ALTO,
                ShopRules.shipped()
                        .with("assembly.contact-u_mm", contacts)
                        .with("assembly.arm-u_mm", 0)
                        .with("assembly.pad-u_mm", pads));
    }

    @Test
    void corks_cut_by_eye_never_shut_every_cup_at_once() {
        FirstAssembly typical = FirstAssembly.of(ALTO, ShopRules.shipped());
        assertThat(typical.allClosed()).isLessThan(0.05);
        assertThat(typical.gapP95Mm()).isGreaterThan(0.1);
        assertThat(typical.worstCup()).isNotNull();
        assertThat(typical.mostWorth()).hasSize(3);
    }

    @Test
    void corks_cut_exactly_always_do() {
        FirstAssembly exact = cutTo(0, 0);
        assertThat(exact.allClosed()).isEqualTo(1);
        assertThat(exact.worstCup()).isNull();
    }

    @Test
    void the_three_contacts_named_are_those_that_help_most_and_each_helps() {
        FirstAssembly fine = cutTo(0.012, 0);
        assertThat(fine.allClosed()).isBetween(0.2, 0.9);
        assertThat(fine.mostWorth())
                .allSatisfy(gain -> assertThat(gain.allClosed()).isGreaterThan(fine.allClosed()))
                .isSortedAccordingTo((one, two) -> Double.compare(two.allClosed(), one.allClosed()));
    }

    @Test
    void the_same_question_has_the_same_answer() {
        assertThat(cutTo(0.02, 0.01)).isEqualTo(cutTo(0.02, 0.01));
    }
}
