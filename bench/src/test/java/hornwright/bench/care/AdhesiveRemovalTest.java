package hornwright.bench.care;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.care.AdhesiveRemoval.Adhesive;
import hornwright.bench.care.AdhesiveRemoval.Finish;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class AdhesiveRemovalTest {
    @Test
    void no_alcohol_is_advised_on_spirit_lacquer() {
        assertThat(AdhesiveRemoval.of(Adhesive.SHELLAC, Finish.SPIRIT_LACQUER, false)
                        .way())
                .contains("No alcohol");
    }

    @ParameterizedTest
    @EnumSource(names = {"SPIRIT_LACQUER", "BAKED_LACQUER"})
    void no_ketone_is_advised_on_lacquer(Finish lacquer) {
        assertThat(AdhesiveRemoval.of(Adhesive.CONTACT_CEMENT, lacquer, true).way())
                .contains("no ketone");
    }

    @ParameterizedTest
    @EnumSource
    void a_part_that_bears_no_heat_is_never_warmed(Finish finish) {
        for (Adhesive adhesive : Adhesive.values()) {
            assertThat(AdhesiveRemoval.of(adhesive, finish, false).hazards()).doesNotContain(Hazard.HEAT);
        }
    }

    @ParameterizedTest
    @EnumSource
    void every_hazard_says_what_to_mind(Hazard hazard) {
        assertThat(hazard.cautions()).isNotEmpty().allMatch(caution -> caution.endsWith("."));
    }
}
