package hornwright.engines.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.linkage.Mechanism.Cup;
import hornwright.engines.linkage.Mechanism.Link;
import hornwright.engines.linkage.Mechanism.Sense;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ThicknessesTest {
    @Test
    void level_pads_need_contacts_as_thick_as_their_space() {
        Thicknesses thicknesses = Thicknesses.of(Trio.of(0, 0, 0), Trio.SETS);
        assertThat(thicknesses.set()).extracting(SetThickness::link).containsExactly("d>f-sharp", "f-sharp>bis");
        assertThat(thicknesses.set()).allSatisfy(set -> {
            assertThat(set.thickness()).isCloseTo(0.9e-3, within(1e-15));
            assertThat(set.change()).isCloseTo(0.1e-3, within(1e-15));
        });
        assertThat(thicknesses.conflicts()).isEmpty();
    }

    @Test
    void a_pad_that_stands_proud_is_met_by_the_arms_as_worked_by_hand() {
        // f-sharp closes at +0.05/31 rad: d>f-sharp 0.9 - 16.9 × 0.05/31, f-sharp>bis 0.9 + 15 × 0.05/31
        Thicknesses thicknesses = Thicknesses.of(Trio.of(0, -0.05e-3, 0), Trio.SETS);
        assertThat(thicknesses.set().get(0).thickness()).isCloseTo(0.872741935e-3, within(1e-12));
        assertThat(thicknesses.set().get(1).thickness()).isCloseTo(0.924193548e-3, within(1e-12));
    }

    @Test
    void with_the_set_thicknesses_every_cup_just_touches_when_the_first_does() {
        Random random = new Random(41);
        for (int trial = 0; trial < 100; trial++) {
            double[] offsets = random.doubles(3, -1e-4, 1e-4).toArray();
            Mechanism raw = Trio.of(offsets);
            Mechanism set = Thicknesses.of(raw, Trio.SETS).in(raw);
            double[] landed = new double[3];
            for (int i = 0; i < 3; i++) {
                landed[i] = -offsets[i] / raw.cups().get(i).arm();
            }
            Contacts contacts = Contacts.of(set);
            for (int row : new int[] {0, 1, 2, contacts.linkRow(0), contacts.linkRow(1)}) {
                assertThat(contacts.stiffGap(row, landed)).isCloseTo(0, within(1e-16));
            }
            Equilibrium pressed =
                    Balance.of(set).under(List.of(Trio.SETS.getFirst().press()));
            assertThat(java.util.Arrays.stream(pressed.cups().gap()).max().orElseThrow())
                    .isNegative();
        }
    }

    @Test
    void only_closing_links_between_the_pressed_key_and_a_named_cup_belong_to_a_set() {
        Mechanism trio = Trio.of(0, 0, 0);
        List<Mechanism.Key> keys = new ArrayList<>(trio.keys());
        keys.add(new Mechanism.Key("side", 0));
        List<Link> links = new ArrayList<>(trio.links());
        links.add(Trio.link("d>side", "d", 0.01, "side", 0.01));
        links.add(Trio.link("side>bis", "side", 0.01, "bis", 0.01));
        links.add(Trio.link("bis>side", "bis", 0.01, "side", 0.01));
        links.add(new Link("d-lifts-bis", "d", 0.01, "bis", 0.01, 1e-3, 1e-3, 1e5, Sense.OPENS));
        Mechanism wider = new Mechanism(keys, trio.cups(), trio.stops(), links, trio.springs());
        Landing twoCups = new Landing(new Press("d", 1, 0.035), List.of("cup.d", "cup.f-sharp"));
        assertThat(Thicknesses.of(wider, List.of(twoCups)).set())
                .extracting(SetThickness::link)
                .containsExactly("d>f-sharp");
        assertThat(Thicknesses.of(wider, Trio.SETS).set())
                .extracting(SetThickness::link)
                .containsExactly("d>f-sharp", "f-sharp>bis", "d>side", "side>bis", "bis>side");
    }

    @Test
    void sets_that_need_a_key_in_two_places_are_a_conflict() {
        Mechanism trio = Trio.of(0, 0, 0);
        List<Cup> cups = new ArrayList<>(trio.cups());
        cups.add(new Cup("cup.second", "bis", 0.03, 12e3, 3e-5));
        Mechanism twoCups = new Mechanism(trio.keys(), cups, trio.stops(), trio.links(), trio.springs());
        List<Landing> sets =
                List.of(Trio.SETS.getFirst(), new Landing(new Press("f-sharp", 1, 0.03), List.of("cup.second")));
        Thicknesses thicknesses = Thicknesses.of(twoCups, sets);
        assertThat(thicknesses.conflicts()).hasSize(1);
        Conflict conflict = thicknesses.conflicts().getFirst();
        assertThat(conflict.link()).isEqualTo("f-sharp>bis");
        assertThat(conflict.presses()).containsExactly("d", "f-sharp");
        assertThat(conflict.most() - conflict.least()).isCloseTo(0.0111 * 1e-3, within(1e-12));
        assertThat(thicknesses.set()).extracting(SetThickness::link).doesNotHaveDuplicates();
    }

    @Test
    void sets_that_differ_by_less_than_a_micron_agree() {
        Mechanism trio = Trio.of(0, 0, 0);
        List<Cup> cups = new ArrayList<>(trio.cups());
        cups.add(new Cup("cup.second", "bis", 0.03, 12e3, 2e-6));
        Mechanism twoCups = new Mechanism(trio.keys(), cups, trio.stops(), trio.links(), trio.springs());
        List<Landing> sets = List.of(Trio.SETS.getFirst(), new Landing(new Press("d", 1, 0.03), List.of("cup.second")));
        assertThat(Thicknesses.of(twoCups, sets).conflicts()).isEmpty();
    }
}
