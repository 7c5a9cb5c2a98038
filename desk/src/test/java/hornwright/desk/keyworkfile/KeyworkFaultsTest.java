package hornwright.desk.keyworkfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hornwright.bench.horn.Keywork;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Fault;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Keywork files that describe no possible horn. */
class KeyworkFaultsTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final Keywork ALTO = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();

    private static List<Fault> faults(Consumer<ObjectNode> damage) {
        ObjectNode file = (ObjectNode) JSON.readTree(KeyworkFile.write(ALTO));
        damage.accept(file);
        BadInput bad = catchThrowableOfType(BadInput.class, () -> KeyworkFile.read(JSON.writeValueAsString(file)));
        return bad == null ? List.of() : bad.faults();
    }

    private static ObjectNode member(ObjectNode file, String list, String id) {
        return (ObjectNode) file.get(list).get(index(file, list, id));
    }

    private static int index(ObjectNode file, String list, String id) {
        int at = 0;
        for (JsonNode one : file.get(list)) {
            if (one.get("id").asString().equals(id)) {
                return at;
            }
            at++;
        }
        throw new IllegalArgumentException(id);
    }

    @Test
    void an_undamaged_file_has_no_fault() {
        assertThat(faults(file -> {})).isEmpty();
    }

    @Test
    void a_cup_on_no_key_is_refused() {
        List<Fault> found = faults(file -> member(file, "cups", "cup.a").put("key", "aa"));
        assertThat(found)
                .contains(new Fault(
                        "/cups/13/key",
                        "cup.a sits on no key: there is no key \"aa\"",
                        "the id of a key of this file, such as \"low-b-flat\""));
    }

    @Test
    void a_contact_on_no_key_is_refused() {
        List<Fault> found =
                faults(file -> member(file, "links", "link.a-to-bis").put("follower", "bus"));
        assertThat(found).contains(new Fault("/links/7/follower", "no key is called \"bus\"", "\"low-b-flat\""));
    }

    @Test
    void a_screw_too_coarse_for_a_key_is_refused_and_one_without_a_pitch_too() {
        List<Fault> coarse = faults(file ->
                member(file, "links", "link.f-sharp-to-bis").putObject("screw").put("pitch_mm", 1.5));
        assertThat(coarse)
                .singleElement()
                .satisfies(fault -> assertThat(fault.pointer()).isEqualTo("/links/4/screw/pitch_mm"))
                .satisfies(fault -> assertThat(fault.what()).contains("moves the contact by 1.50 mm"));
        List<Fault> none =
                faults(file -> member(file, "links", "link.f-sharp-to-bis").putObject("screw"));
        assertThat(none).extracting(Fault::pointer).containsExactly("/links/4/screw/pitch_mm");
    }

    @Test
    void an_unknown_place_in_a_contact_is_refused() {
        List<Fault> found = faults(file -> ((ObjectNode)
                        member(file, "links", "link.a-to-bis").get("layers").get(0))
                .put("place", "link.nowhere"));
        assertThat(found)
                .contains(new Fault(
                        "/links/7/layers/0/place",
                        "no place is called \"link.nowhere\"",
                        "\"place\": \"foot.a\", with foot.a among the places"));
    }

    @Test
    void an_unknown_kind_of_place_is_refused_with_all_kinds() {
        List<Fault> found = faults(file -> member(file, "places", "thumb-rest").put("id", "thumb.rest"));
        assertThat(found).anySatisfy(fault -> {
            assertThat(fault.what()).isEqualTo("\"thumb\" is no kind of place");
            assertThat(fault.example()).contains("thumb-rest", "guard-screw");
        });
    }

    @Test
    void repeated_ids_are_refused_in_every_list() {
        for (String list : List.of("holes", "cups", "keys", "links", "rods", "places", "fingerings")) {
            List<Fault> found = faults(file -> {
                ArrayNode all = (ArrayNode) file.get(list);
                all.add(all.get(0).deepCopy());
            });
            assertThat(found).as(list).anySatisfy(fault -> {
                assertThat(fault.pointer()).startsWith("/" + list + "/");
                assertThat(fault.example()).isNotBlank();
            });
        }
    }

    @Test
    void links_that_close_each_other_in_a_circle_are_refused_with_their_names() {
        List<Fault> found = faults(file -> {
            ArrayNode links = (ArrayNode) file.get("links");
            ObjectNode back = ((ObjectNode) links.get(index(file, "links", "link.d-to-f-sharp"))).deepCopy();
            back.put("id", "link.f-sharp-to-d").put("driver", "f-sharp").put("follower", "d");
            // F sharp would have to move further than D to close D, and D further than F sharp to close it
            back.put("driverArm_mm", 15).put("followerArm_mm", 16).put("space_mm", 0.9);
            ObjectNode layer = (ObjectNode) back.get("layers").get(0);
            layer.put("place", "link.f-sharp-to-d");
            ObjectNode place = member(file, "places", "link.d-to-f-sharp").deepCopy();
            place.put("id", "link.f-sharp-to-d");
            ((ObjectNode) place.get("belongsTo")).put("link", "link.f-sharp-to-d");
            ((ArrayNode) file.get("places")).add(place);
            links.add(back);
        });
        assertThat(found).anySatisfy(fault -> {
            assertThat(fault.pointer()).startsWith("/links/");
            assertThat(fault.what()).contains("close in a circle", "link.d-to-f-sharp", "link.f-sharp-to-d");
            assertThat(fault.example()).isEqualTo("one link of the circle left out, or more space in it");
        });
    }

    @Test
    void a_hole_beyond_the_bell_or_wider_than_the_bore_is_refused() {
        assertThat(faults(file -> member(file, "holes", "low-b-flat").put("at_mm", 1100)))
                .anySatisfy(fault -> assertThat(fault.pointer()).isEqualTo("/holes/0/at_mm"));
        assertThat(faults(file -> member(file, "holes", "a").put("diameter_mm", 60)))
                .anySatisfy(fault -> assertThat(fault.what()).startsWith("the hole is wider than the bore"));
    }

    @Test
    void a_rod_that_must_come_off_before_and_after_another_is_refused() {
        List<Fault> found = faults(file ->
                ((ArrayNode) member(file, "rods", "rod.lower-stack").get("removeAfter")).add("rod.upper-stack"));
        assertThat(found)
                .contains(new Fault(
                        "/rods/2/removeAfter/0",
                        "rod.upper-stack comes off later than rod.lower-stack",
                        "a rod with a smaller order"));
    }

    @Test
    void a_link_that_jams_with_nothing_pressed_is_refused_with_the_space_it_needs() {
        List<Fault> found =
                faults(file -> member(file, "links", "link.a-to-bis").put("space_mm", 0));
        assertThat(found).anySatisfy(fault -> {
            assertThat(fault.pointer()).isEqualTo("/links/7/space_mm");
            assertThat(fault.what()).startsWith("with nothing pressed this link jams by");
            assertThat(fault.example()).startsWith("at least ");
        });
    }

    @Test
    void a_cup_that_says_another_rest_or_height_than_its_key_is_refused() {
        assertThat(faults(file -> member(file, "cups", "cup.a").put("rest", "closed")))
                .anySatisfy(fault -> assertThat(fault.pointer()).isEqualTo("/cups/13/rest"));
        assertThat(faults(file -> member(file, "cups", "cup.a").put("heightFront_mm", 7)))
                .anySatisfy(fault -> assertThat(fault.example()).isEqualTo("5.50"));
    }

    @Test
    void a_pad_that_says_another_thickness_than_its_place_is_refused() {
        assertThat(faults(file -> ((ObjectNode) member(file, "cups", "cup.a").get("pad")).put("thickness_mm", 4.5)))
                .contains(new Fault(
                        "/cups/13/pad",
                        "here stands kid leather over woven wool felt 4.5 mm, at the place pad.a kid leather over"
                                + " woven wool felt 4.1 mm",
                        "the same at both"));
    }

    @Test
    void sets_states_and_fingerings_may_not_speak_of_what_is_not_there() {
        List<Fault> found = faults(file -> {
            ((ObjectNode) file.get("sets").get(0)).put("press", "dd");
            ((ObjectNode) file.get("octaveStates").get(2)).put("openVent", "a");
            ((ArrayNode) file.get("fingerings").get(1).get("open")).add("nowhere");
            ((ArrayNode) file.get("lowTable").get("rollers")).add("pearl.a");
        });
        assertThat(found)
                .extracting(Fault::pointer)
                .contains("/sets/0/press", "/octaveStates/2/openVent", "/fingerings/1/open/1", "/lowTable/rollers/5");
    }

    @Test
    void a_set_that_no_links_close_is_refused() {
        List<Fault> found = faults(file -> ((ArrayNode) file.get("sets").get(0).get("closes")).add("cup.low-c"));
        assertThat(found)
                .contains(new Fault(
                        "/sets/0/closes/3",
                        "no links lead from d to cup.low-c",
                        "a cup that d closes itself or through links"));
    }

    @Test
    void all_faults_are_told_at_once() {
        List<Fault> found = faults(file -> {
            member(file, "cups", "cup.a").put("key", "aa");
            member(file, "cups", "cup.b").put("hole", "bb");
            member(file, "keys", "g").put("rod", "rod.nowhere");
        });
        assertThat(found).extracting(Fault::pointer).contains("/cups/13/key", "/cups/16/hole", "/keys/11/rod");
    }

    @Test
    void a_number_of_the_wrong_kind_or_an_unknown_field_is_refused() {
        assertThat(faults(file -> member(file, "holes", "a").put("diameter_mm", "20 mm")))
                .anySatisfy(fault -> assertThat(fault.pointer()).isEqualTo("/holes/13/diameter_mm"));
        assertThat(faults(file -> member(file, "holes", "a").put("diametre_mm", 20)))
                .anySatisfy(fault -> assertThat(fault.pointer()).isEqualTo("/holes/13/diametre_mm"));
    }

    @Test
    void a_file_of_another_kind_or_from_a_newer_program_is_refused() {
        assertThat(faults(file -> file.put("format", "drawing")))
                .anySatisfy(fault -> assertThat(fault.what()).isEqualTo("this is not a keywork file"));
        assertThat(faults(file -> file.put("version", 2)))
                .anySatisfy(fault -> assertThat(fault.what()).isEqualTo("this file is from a newer program"));
    }
}
