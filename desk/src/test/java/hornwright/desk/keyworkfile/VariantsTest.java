package hornwright.desk.keyworkfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.horn.Articulation;
import hornwright.bench.horn.BellKeySide;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.KeyworkCheck;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.LinkKind;
import hornwright.bench.horn.OctaveLevers;
import hornwright.bench.horn.Pieces;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Rod;
import hornwright.bench.horn.Switches;
import hornwright.bench.horn.Touch;
import hornwright.bench.horn.variant.Variants;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Horns derived from the shipped files by switches. */
@Tag("slow")
class VariantsTest {
    private static final Keywork ALTO = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
    private static final Keywork TENOR =
            KeyworkFile.shipped("tarrant-loe-tenor").orElseThrow();

    @ParameterizedTest
    @ValueSource(strings = {"tarrant-loe-alto", "tarrant-loe-tenor", "tarrant-loe-odd"})
    void every_variant_that_can_be_had_could_stand_on_a_bench(String name) {
        Keywork base = KeyworkFile.shipped(name).orElseThrow();
        int had = 0;
        for (Switches wanted : allSwitches()) {
            if (Variants.refusals(base, wanted).isEmpty()) {
                Keywork variant = Variants.of(base, wanted);
                assertThat(KeyworkCheck.flaws(variant)).as(wanted.toString()).isEmpty();
                assertThat(variant.switches()).isEqualTo(wanted);
                assertThat(variant.links())
                        .allSatisfy(link -> assertThat(link.screw())
                                .isEqualTo(base.links()
                                        .find(link.id())
                                        .map(Link::screw)
                                        .orElse(null)));
                nothingIsLeftOver(variant);
                had++;
            }
        }
        assertThat(had).isGreaterThan(30);
    }

    private static void nothingIsLeftOver(Keywork horn) {
        for (Rod rod : horn.rods()) {
            assertThat(horn.keysOn(rod)).isNotEmpty();
        }
        assertThat(horn.removalOrder().stream().map(Rod::order))
                .containsExactlyElementsOf(
                        IntStream.rangeClosed(1, horn.rods().size()).boxed().toList());
        for (Key key : horn.keys()) {
            boolean moved = key.touch() != null
                    || horn.cupOf(key).isPresent()
                    || !horn.linksTo(key).isEmpty();
            assertThat(moved).as(key.id()).isTrue();
        }
    }

    private static List<Switches> allSwitches() {
        List<Switches> all = new ArrayList<>();
        for (int bits = 0; bits < 512; bits++) {
            for (BellKeySide side : BellKeySide.values()) {
                all.add(new Switches(
                        on(bits, 0),
                        on(bits, 1),
                        on(bits, 2),
                        on(bits, 3),
                        side,
                        on(bits, 4) ? Pieces.ONE_PIECE : Pieces.TWO_PIECE,
                        on(bits, 5) ? Articulation.PLAIN : Articulation.ARTICULATED,
                        on(bits, 6) ? Articulation.PLAIN : Articulation.ARTICULATED,
                        on(bits, 7) ? OctaveLevers.TWO : OctaveLevers.ONE,
                        on(bits, 8) ? Pieces.ONE_PIECE : Pieces.TWO_PIECE));
            }
        }
        return all;
    }

    private static boolean on(int bits, int which) {
        return (bits >> which & 1) == 1;
    }

    @Test
    void the_switches_a_horn_has_leave_it_as_it_is() {
        assertThat(Variants.of(ALTO, ALTO.switches())).isSameAs(ALTO);
    }

    @Test
    void without_side_f_sharp_its_cup_rod_places_and_fingerings_are_gone() {
        Keywork horn = Variants.of(ALTO, with(false, true, false));
        assertThat(horn.holes().find("side-f-sharp")).isEmpty();
        assertThat(horn.rods().find("rod.side-f-sharp")).isEmpty();
        assertThat(horn.places().stream().map(Place::id)).noneMatch(id -> id.contains("side-f-sharp"));
        assertThat(horn.fingerings().stream().map(f -> f.label())).doesNotContain("side F#");
        assertThat(horn.cups().size()).isEqualTo(ALTO.cups().size() - 1);
    }

    @Test
    void one_piece_bell_keys_have_no_link_cork_and_keep_every_other_gap() {
        Switches has = ALTO.switches();
        Keywork horn = Variants.of(
                ALTO,
                new Switches(
                        has.sideFSharp(),
                        has.highFSharp(),
                        has.frontF(),
                        has.forkedEFlat(),
                        BellKeySide.LEFT,
                        Pieces.ONE_PIECE,
                        has.gSharp(),
                        has.lowCSharp(),
                        has.octaveLevers(),
                        has.sideLevers()));
        assertThat(horn.places().find("link.table-b-to-low-b")).isEmpty();
        assertThat(horn.places().find("adhesive.link.table-b-to-low-b")).isEmpty();
        assertThat(horn.keys().find("table-b")).isEmpty();
        assertThat(horn.lowTable().rollers()).contains("roller.table-b");
        for (Link link : horn.links()) {
            double before = ALTO.restGapMm(ALTO.links().get(link.id()));
            assertThat(horn.restGapMm(link)).as(link.id()).isCloseTo(before, within(1e-9));
        }
        assertThat(horn.holes().get("low-b").at().angleDeg()).isEqualTo(-90);
        assertThat(horn.keys().get("low-b").axis().angleDeg()).isEqualTo(-156);
    }

    @Test
    void one_piece_side_keys_open_with_the_force_and_travel_they_had() {
        Switches has = ALTO.switches();
        Keywork horn = Variants.of(
                ALTO,
                new Switches(
                        has.sideFSharp(),
                        has.highFSharp(),
                        has.frontF(),
                        has.forkedEFlat(),
                        has.bellKeys(),
                        has.bellKeyPieces(),
                        has.gSharp(),
                        has.lowCSharp(),
                        has.octaveLevers(),
                        Pieces.ONE_PIECE));
        Key before = ALTO.keys().get("side-c-lever");
        Key after = horn.keys().get("side-c");
        Touch was = Objects.requireNonNull(before.touch());
        Touch is = Objects.requireNonNull(after.touch());
        assertThat(is.closes()).isFalse();
        assertThat(is.armMm() * after.pressedRotationRad())
                .isCloseTo(-was.armMm() * before.pressedRotationRad(), within(0.02));
        assertThat(is.forceN()).isEqualTo(was.forceN());
        assertThat(horn.places().find("sleeve.side-c")).isEmpty();
        assertThat(horn.places().get("guide.side-c-lever").belongsTo().id()).isEqualTo("side-c");
        assertThat(horn.rods().find("rod.side-levers")).isEmpty();
    }

    @Test
    void a_plain_g_sharp_is_held_by_its_own_spring_and_by_nothing_else() {
        Switches has = ALTO.switches();
        Keywork horn = Variants.of(
                ALTO,
                new Switches(
                        has.sideFSharp(),
                        has.highFSharp(),
                        has.frontF(),
                        has.forkedEFlat(),
                        has.bellKeys(),
                        has.bellKeyPieces(),
                        Articulation.PLAIN,
                        has.lowCSharp(),
                        has.octaveLevers(),
                        has.sideLevers()));
        Key key = horn.keys().get("g-sharp");
        assertThat(horn.linksTo(key)).isEmpty();
        assertThat(key.spring().towards().word()).isEqualTo("closed");
        assertThat(horn.lowTable().gSharpTabs()).isEmpty();
        assertThat(horn.links().stream().map(Link::kind)).doesNotContain(LinkKind.RELEASES);
        assertThat(horn.holds()).allSatisfy(hold -> assertThat(hold.holds()).doesNotContain("cup.g-sharp"));
    }

    @Test
    void a_high_f_sharp_lies_as_far_above_high_f_as_that_above_high_e() {
        Switches has = ALTO.switches();
        Keywork horn = Variants.of(
                ALTO,
                new Switches(
                        has.sideFSharp(),
                        true,
                        has.frontF(),
                        has.forkedEFlat(),
                        has.bellKeys(),
                        has.bellKeyPieces(),
                        has.gSharp(),
                        has.lowCSharp(),
                        has.octaveLevers(),
                        has.sideLevers()));
        double e = horn.holes().get("high-e").at().atMm();
        double f = horn.holes().get("palm-f").at().atMm();
        assertThat(horn.holes().get("high-f-sharp").at().atMm()).isCloseTo(2 * f - e, within(0.1));
        assertThat(horn.places().stream().map(Place::id))
                .contains(
                        "pad.high-f-sharp", "foot.high-f-sharp", "spring.high-f-sharp", "adhesive.saddle.high-f-sharp");
        assertThat(horn.fingerings().get("note.f-sharp-6").open()).contains("palm-f", "high-f-sharp");
        assertThat(horn.rods().get("rod.high-f-sharp").removeAfter()).containsExactly("rod.high-e");
        assertThat(horn.rods().get("rod.side-cups").removeAfter()).contains("rod.high-f-sharp");
    }

    @Test
    void with_a_forked_e_flat_the_second_finger_shuts_a_vent_and_d_shuts_e() {
        Switches has = ALTO.switches();
        Keywork horn = Variants.of(
                ALTO,
                new Switches(
                        has.sideFSharp(),
                        has.highFSharp(),
                        has.frontF(),
                        true,
                        has.bellKeys(),
                        has.bellKeyPieces(),
                        has.gSharp(),
                        has.lowCSharp(),
                        has.octaveLevers(),
                        has.sideLevers()));
        assertThat(horn.keys().get("e").touch()).isNull();
        assertThat(horn.places().get("pearl.e").belongsTo().id()).isEqualTo("e-touch");
        assertThat(horn.sets().stream()
                        .filter(set -> set.press().equals("e-touch"))
                        .findFirst()
                        .orElseThrow()
                        .closes())
                .contains("cup.e", "cup.forked-e-flat");
        assertThat(horn.sets().stream()
                        .filter(set -> set.press().equals("d"))
                        .findFirst()
                        .orElseThrow()
                        .closes())
                .contains("cup.d", "cup.e");
        assertThat(horn.fingerings().get("note.e-flat-4.forked").open())
                .contains("forked-e-flat")
                .doesNotContain("d", "e", "f");
        assertThat(horn.fingerings().get("note.e-4").open()).doesNotContain("forked-e-flat");
        assertThat(horn.fingerings().get("note.f-4").open()).contains("forked-e-flat");
    }

    @Test
    void two_octave_levers_need_no_switch_and_have_a_state_for_each() {
        Switches has = ALTO.switches();
        Keywork horn = Variants.of(
                ALTO,
                new Switches(
                        has.sideFSharp(),
                        has.highFSharp(),
                        has.frontF(),
                        has.forkedEFlat(),
                        has.bellKeys(),
                        has.bellKeyPieces(),
                        has.gSharp(),
                        has.lowCSharp(),
                        OctaveLevers.TWO,
                        has.sideLevers()));
        assertThat(horn.keys().find("octave-switch")).isEmpty();
        assertThat(horn.places().find("rocker-contact.octave-switch")).isEmpty();
        assertThat(horn.links()).allMatch(link -> link.coupling() == null);
        assertThat(horn.octaveStates()).hasSize(3);
        assertThat(horn.places().stream().map(Place::id)).contains("upper-stop.octave-thumb-upper");
    }

    @Test
    void what_a_file_has_not_got_is_refused_in_a_sentence() {
        Keywork odd = KeyworkFile.shipped("tarrant-loe-odd").orElseThrow();
        assertThat(Variants.refusals(odd, ALTO.switches()))
                .contains(
                        "this file has not a side F♯; take a file that has it",
                        "this file has not bell keys in two pieces; take a file that has it");
        assertThatThrownBy(() -> Variants.of(odd, ALTO.switches())).hasMessageContaining("side F♯");
    }

    @Test
    void a_variant_survives_being_written_and_read_again() {
        Keywork horn = Variants.of(TENOR, with(false, false, false));
        assertThat(KeyworkFile.read(KeyworkFile.write(horn))).isEqualTo(horn);
    }

    /** Left and one-piece bell keys, plain table, one-piece side levers. */
    private static Switches with(boolean sideFSharp, boolean frontF, boolean highFSharp) {
        return new Switches(
                sideFSharp,
                highFSharp,
                frontF,
                false,
                BellKeySide.LEFT,
                Pieces.ONE_PIECE,
                Articulation.PLAIN,
                Articulation.PLAIN,
                OctaveLevers.ONE,
                Pieces.ONE_PIECE);
    }
}
