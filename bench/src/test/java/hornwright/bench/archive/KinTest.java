package hornwright.bench.archive;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.horn.Voice;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A place that few horns were looked at, told from the others of its family. */
class KinTest {
    private static final List<String> FEET = List.of("foot.d", "foot.e", "foot.f", "foot.f-sharp", "foot.g");
    private static final long CHANGE = 45_000;

    private final Map<String, Witness> horns = new LinkedHashMap<>();
    private final List<Observation> looks = new ArrayList<>();

    private void look(long serial, String place, String material) {
        String id = "w-" + serial;
        horns.putIfAbsent(
                id, new Witness(id, serial, Voice.ALTO, "Tarrant & Loe", "", null, Integrity.ORIGINAL, Map.of()));
        looks.add(measured(id + "." + place + looks.size(), id, place, material));
    }

    /** A look at an unaltered part, measured and written down. */
    static Observation measured(String id, String witness, String place, String material) {
        return new Observation(
                id,
                witness,
                place,
                material,
                null,
                null,
                null,
                null,
                null,
                new Means.Examined(Method.MEASURED, true),
                Hand.FIRST,
                Bearing.DIRECT,
                new Origin(witness, Kind.OBJECT),
                Interest.NEUTRAL,
                "page " + witness,
                null);
    }

    private Archive archive() {
        return new Archive("Tarrant & Loe", List.copyOf(horns.values()), looks, List.of(), List.of(), Map.of());
    }

    /** Four feet on thirty horns, cork and later felt; the fifth is left to the test. */
    private void fourFeet() {
        for (int i = 0; i < 30; i++) {
            long serial = 40_000 + 350L * i;
            for (String foot : FEET.subList(0, 4)) {
                look(serial, foot, serial < CHANGE ? "cork" : "felt");
            }
        }
    }

    private Kin kin(String place, long serial) {
        return Objects.requireNonNull(
                archive().kin(Voice.ALTO, serial, List.of(FEET)).get(place));
    }

    @Test
    void a_place_nobody_looked_at_stays_a_gap_and_its_family_is_told_beside_it() {
        fourFeet();
        Kin kin = kin("foot.g", 41_000);
        assertThat(kin.material()).isEqualTo("cork");
        assertThat(kin.probability()).isBetween(0.9, 0.97);
        assertThat(kin.inWords())
                .isEqualTo("4 others of its kind, looked at on 30 horns: most likely cork, probability 0.95;"
                        + " whether it goes with them nobody has looked");
        AsBuiltAt built = Objects.requireNonNull(
                archive().asBuilt(Voice.ALTO, 41_000, FEET).get("foot.g"));
        assertThat(built.isGap()).isTrue();
        assertThat(built.grade()).isEqualTo(Grade.NOT_ASSESSED);
    }

    @Test
    void one_look_is_enough_to_borrow_the_change_over_of_the_family() {
        fourFeet();
        look(41_000, "foot.g", "cork");
        assertThat(kin("foot.g", 49_000).material()).isEqualTo("felt");
        assertThat(kin("foot.g", 49_000).follows()).isGreaterThan(0.9);
        assertThat(kin("foot.g", 49_000).inWords()).endsWith("its one look agrees with them");
        AsBuiltAt alone = Objects.requireNonNull(
                archive().asBuilt(Voice.ALTO, 49_000, FEET).get("foot.g"));
        assertThat(alone.material()).as("by itself it knows of no change").isEqualTo("cork");
        assertThat(alone.grade()).as("and its grade is its own").isEqualTo(Grade.REPORTED);
    }

    @Test
    void two_looks_that_differ_from_the_family_speak_for_a_way_of_its_own() {
        fourFeet();
        look(41_000, "foot.g", "felt");
        look(42_750, "foot.g", "felt");
        Kin kin = kin("foot.g", 41_900);
        assertThat(kin.follows()).isLessThan(0.2);
        assertThat(kin.material()).isEqualTo("felt");
        assertThat(kin.inWords()).endsWith("its 2 looks speak for a way of its own");
    }

    @Test
    void a_place_that_goes_its_own_way_is_left_out_of_the_others() {
        fourFeet();
        looks.removeIf(seen -> seen.place().equals("foot.d"));
        for (int i = 0; i < 30; i++) {
            look(40_000 + 350L * i, "foot.d", "leather");
        }
        assertThat(kin("foot.g", 41_000).others()).containsExactly("foot.e", "foot.f", "foot.f-sharp");
        assertThat(kin("foot.g", 41_000).material()).isEqualTo("cork");
    }

    @Test
    void more_places_of_the_same_horns_make_no_horn_count_more() {
        fourFeet();
        double four = kin("foot.g", 44_900).probability();
        looks.removeIf(seen -> seen.place().equals("foot.d") || seen.place().equals("foot.e"));
        assertThat(kin("foot.g", 44_900).probability()).isEqualTo(four);
    }

    @Test
    void no_grade_changes_whatever_the_family_shows() {
        Random random = new Random(17);
        for (int trial = 0; trial < 100; trial++) {
            horns.clear();
            looks.clear();
            for (int i = 0; i < 1 + random.nextInt(2); i++) {
                look(40_000 + random.nextInt(9_000), "foot.g", random.nextBoolean() ? "cork" : "felt");
            }
            long serial = 40_000L + random.nextInt(9_000);
            AsBuiltAt before = Objects.requireNonNull(
                    archive().asBuilt(Voice.ALTO, serial, FEET).get("foot.g"));
            fourFeet();
            AsBuiltAt after = Objects.requireNonNull(
                    archive().asBuilt(Voice.ALTO, serial, FEET).get("foot.g"));
            assertThat(after.grade()).isEqualTo(before.grade());
            assertThat(after.material()).isEqualTo(before.material());
        }
    }

    @Test
    void a_place_looked_at_on_three_horns_speaks_for_itself() {
        fourFeet();
        look(41_000, "foot.g", "cork");
        look(42_000, "foot.g", "cork");
        look(43_000, "foot.g", "cork");
        assertThat(archive().kin(Voice.ALTO, 41_000, List.of(FEET))).isEmpty();
    }
}
