package hornwright.desk.message;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** Texts by key, their parts, and English made strange. */
final class MessagesTest {
    @Test
    void parts_are_put_in_once_and_a_part_is_never_read_as_a_place_for_another() {
        Messages texts = Messages.english();
        assertThat(texts.say("tour.of", 2, "{0} and {1}")).isEqualTo("2 of 5, {0} and {1}.");
    }

    @Test
    void a_text_nobody_wrote_is_a_mistake_of_the_program() {
        assertThatThrownBy(() -> Messages.english().say("tour.nowhere")).hasMessageContaining("tour.nowhere");
        assertThatThrownBy(() -> Messages.english().say("nowhere.at-all")).hasMessageContaining("nowhere.at-all");
    }

    @Test
    void only_a_language_that_has_files_is_spoken() {
        assertThat(Messages.in("en")).isPresent();
        assertThat(Messages.in("pseudo"))
                .hasValueSatisfying(texts -> assertThat(texts.tag()).isEqualTo("en-x-pseudo"));
        assertThat(Messages.in("xx")).isEmpty();
        assertThat(Messages.in("../en")).isEmpty();
    }

    @Test
    void made_strange_a_text_keeps_its_parts_and_is_two_fifths_longer() {
        for (String text : Messages.english().file("help").values()) {
            String strange = Pseudo.of(text);
            assertThat(strange).startsWith("[").endsWith("]");
            assertThat(strange.length()).isGreaterThanOrEqualTo((int) Math.ceil(1.4 * text.length()) + 2);
        }
        assertThat(Pseudo.of("{0} of 5, {1}.")).contains("{0}").contains("{1}").doesNotContain(" of ");
        assertThat(Messages.pseudo().say("tour.of", 2, "Work")).contains("2").contains("Work");
    }

    @Test
    void a_page_speaks_the_language_it_is_written_in() {
        StringBuilder said = new StringBuilder();
        Say.in(Messages.pseudo(), () -> said.append(Say.say("tour.name")).append(Say.language()));
        assertThat(said.toString()).startsWith("[").endsWith("en-x-pseudo");
        assertThat(Say.say("tour.name")).isEqualTo("The tour");
    }
}
