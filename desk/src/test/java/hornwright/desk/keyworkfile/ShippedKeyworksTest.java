package hornwright.desk.keyworkfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.horn.BellKeySide;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Cut;
import hornwright.bench.horn.Form;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Layer;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.LinkKind;
import hornwright.bench.horn.OctaveState;
import hornwright.bench.horn.Pieces;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.horn.TableClearance;
import hornwright.desk.house.Checkout;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** What the shipped keyworks hold. */
class ShippedKeyworksTest {
    static final List<String> SHIPPED = KeyworkFile.SHIPPED;

    @Test
    void every_keywork_file_is_in_the_index_and_is_called_by_its_own_id() {
        List<String> files =
                Checkout.files(Checkout.root().resolve("desk/src/main/resources/hornwright/keywork"), ".json").stream()
                        .map(file -> file.getFileName().toString().replace(".json", ""))
                        .toList();
        assertThat(SHIPPED).containsExactlyInAnyOrderElementsOf(files);
        assertThat(SHIPPED)
                .allSatisfy(name ->
                        assertThat(KeyworkFile.shipped(name).orElseThrow().id()).isEqualTo(name));
    }

    @ParameterizedTest
    @FieldSource("SHIPPED")
    void every_kind_of_place_lies_somewhere_on_each_horn(String name) {
        Keywork horn = KeyworkFile.shipped(name).orElseThrow();
        assertThat(horn.places().stream().map(Place::kind)).contains(PlaceKind.values());
    }

    @ParameterizedTest
    @FieldSource("SHIPPED")
    void everything_soft_on_a_contact_has_its_adhesive_under_it(String name) {
        Keywork horn = KeyworkFile.shipped(name).orElseThrow();
        for (Place place : horn.places()) {
            boolean soft = List.of("natural cork", "woven wool felt")
                    .contains(place.asBuilt().material());
            if (soft && place.kind() != PlaceKind.PAD) {
                assertThat(horn.places().where(under -> place.id().equals(under.beneath())))
                        .as(place.id())
                        .extracting(Place::kind)
                        .containsExactly(PlaceKind.ADHESIVE);
            }
        }
    }

    @ParameterizedTest
    @FieldSource("SHIPPED")
    void nobody_has_to_read_a_number_for_the_name_of_a_key_or_place(String name) {
        Keywork horn = KeyworkFile.shipped(name).orElseThrow();
        Stream<String> shown = Stream.of(
                        horn.keys().stream().map(key -> key.name().display()),
                        horn.holes().stream().map(hole -> hole.name().display()),
                        horn.places().stream().map(Place::display))
                .flatMap(names -> names);
        assertThat(shown).noneMatch(text -> text.chars().anyMatch(Character::isDigit));
    }

    @ParameterizedTest
    @FieldSource("SHIPPED")
    void cups_are_listed_from_the_bell_in_the_order_of_the_notes_they_open(String name) {
        Keywork horn = KeyworkFile.shipped(name).orElseThrow();
        List<String> tune = List.of(
                "low-b-flat",
                "low-b",
                "low-c-sharp",
                "low-c",
                "low-e-flat",
                "d",
                "e",
                "f",
                "f-sharp",
                "g-sharp",
                "g",
                "a",
                "bis",
                "b",
                "c-vent",
                "palm-d",
                "palm-e-flat",
                "high-e",
                "palm-f");
        assertThat(horn.cups().stream().map(Cup::hole).filter(tune::contains)).containsExactlyElementsOf(tune);
    }

    @ParameterizedTest
    @FieldSource("SHIPPED")
    void links_of_every_kind_are_there(String name) {
        Keywork horn = KeyworkFile.shipped(name).orElseThrow();
        assertThat(horn.links().stream().map(Link::kind)).contains(LinkKind.values());
    }

    @ParameterizedTest
    @FieldSource("SHIPPED")
    void the_octave_mechanism_has_four_states_of_which_two_open_one_vent_each(String name) {
        Keywork horn = KeyworkFile.shipped(name).orElseThrow();
        assertThat(horn.octaveStates()).hasSize(4);
        assertThat(horn.octaveStates().stream().map(OctaveState::openVent).filter(vent -> vent != null))
                .containsExactlyInAnyOrder("neck-octave", "body-octave");
    }

    @ParameterizedTest
    @FieldSource("SHIPPED")
    void the_clearances_of_the_low_table_are_those_of_its_links(String name) {
        Keywork horn = KeyworkFile.shipped(name).orElseThrow();
        assertThat(horn.lowTable().gSharpTabs())
                .hasSize(3)
                .allSatisfy(tab ->
                        assertThat(horn.restGapMm(horn.links().get(tab.link()))).isCloseTo(tab.mm(), within(0.002)));
        List<TableClearance> others = Stream.concat(
                        horn.lowTable().cSharpHoldDown().stream(), horn.lowTable().bFlatOverB().stream())
                .toList();
        assertThat(others).hasSize(3).allSatisfy(clearance -> {
            Link link = horn.links().get(clearance.link());
            assertThat(horn.restGapMm(link)).isCloseTo(clearance.atRestMm(), within(0.002));
            assertThat(link.gapMm(0, 0)).isCloseTo(clearance.downMm(), within(0.002));
        });
    }

    @Test
    void the_odd_horn_lacks_a_side_key_splits_its_bell_keys_and_has_a_key_called_x() {
        Keywork odd = KeyworkFile.shipped("tarrant-loe-odd").orElseThrow();
        assertThat(odd.switches().sideFSharp()).isFalse();
        assertThat(odd.switches().bellKeys()).isEqualTo(BellKeySide.SPLIT);
        assertThat(odd.switches().bellKeyPieces()).isEqualTo(Pieces.ONE_PIECE);
        assertThat(odd.holes().find("side-f-sharp")).isEmpty();
        assertThat(odd.holes().get("low-b").at().angleDeg()).isNegative();
        assertThat(odd.holes().get("low-b-flat").at().angleDeg()).isPositive();
        assertThat(odd.keys().get("low-b").touch()).isNotNull();
        assertThat(odd.links().where(into("low-b").and(from("table-b")))).isEmpty();
        Key x = odd.keys().get("x");
        assertThat(x.name().display()).isEqualTo("x");
        assertThat(odd.cupOf(x).map(Cup::hole)).isEqualTo(Optional.of("x"));
    }

    private static Predicate<Link> into(String key) {
        return link -> link.follower().equals(key);
    }

    private static Predicate<Link> from(String key) {
        return link -> link.driver().equals(key);
    }

    @Test
    void a_contact_may_carry_material_on_both_faces_in_any_form() {
        Keywork odd = KeyworkFile.shipped("tarrant-loe-odd").orElseThrow();
        assertThat(odd.links().get("link.f-sharp-to-g-sharp").layers())
                .extracting(layer -> layer.face().word())
                .containsExactly("driver", "follower");
        List<Layer> all = Stream.concat(
                        odd.keys().stream()
                                .flatMap(key -> key.stops().stream())
                                .flatMap(stop -> stop.layers().stream()),
                        odd.links().stream().flatMap(link -> link.layers().stream()))
                .toList();
        assertThat(all.stream().map(Layer::form)).contains(Form.values());
        assertThat(all.stream().map(Layer::cut)).contains(Cut.KNIFED, Cut.PUNCHED, Cut.BEVELLED, Cut.DRAWN_ON);
    }
}
