package hornwright.bench.plan.origin;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said of materials that came with later repairs. */
class LaterUseTest {
    @ParameterizedTest
    @ValueSource(strings = {"synthetic felt", "Hot-melt", "domed plastic", "stainless steel", "cork-rubber composite"})
    void a_material_of_later_repairers_is_named_as_such(String material) {
        assertThat(LaterUse.note(material))
                .hasValueSatisfying(note -> assertThat(note).contains(material, "later repairers"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "natural cork",
                "woven wool felt",
                "shellac",
                "blued steel",
                "brass",
                "kid leather over woven wool felt"
            })
    void what_the_trade_has_always_used_is_not(String material) {
        assertThat(LaterUse.note(material)).isEmpty();
    }

    @Test
    void nothing_is_said_of_a_bare_place() {
        assertThat(LaterUse.note("none")).isEmpty();
    }
}
