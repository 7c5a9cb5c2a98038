package hornwright.bench.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.horn.Voice;
import hornwright.engines.belief.Standing;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** How a place goes along the serials, as the ruler draws it. */
class CourseTest {
    private static final SerialRange SHOWN = new SerialRange(38_000, 50_000);
    private static final Means HELD = new Means.Examined(Method.MEASURED, true);

    private static Witness witness(long serial) {
        return new Witness("w-" + serial, serial, Voice.ALTO, "Tarrant & Loe", "", null, Integrity.ORIGINAL, Map.of());
    }

    private static Observation seen(long serial, String place, String material) {
        return new Observation(
                "w-" + serial + "." + place,
                "w-" + serial,
                place,
                material,
                null,
                null,
                null,
                null,
                null,
                HELD,
                Hand.FIRST,
                Bearing.DIRECT,
                new Origin("horn " + serial, Kind.OBJECT),
                Interest.NEUTRAL,
                "page " + serial,
                null);
    }

    private static Archive archive(Observation... seen) {
        List<Long> serials = List.of(39_000L, 40_000L, 41_000L, 44_000L, 45_000L, 46_000L);
        return new Archive(
                "Tarrant & Loe",
                serials.stream().map(CourseTest::witness).toList(),
                List.of(seen),
                List.of(),
                List.of(),
                Map.of());
    }

    private static final Archive CHANGED = archive(
            seen(39_000, "foot.d", "cork"),
            seen(40_000, "foot.d", "cork"),
            seen(41_000, "foot.d", "cork"),
            seen(44_000, "foot.d", "felt"),
            seen(45_000, "foot.d", "felt"),
            seen(46_000, "foot.d", "felt"));

    private static Course course(Archive archive, String place) {
        return archive.courses(Voice.ALTO, SHOWN, List.of(place)).getFirst();
    }

    @Test
    void at_both_ends_it_says_what_the_sheet_says_and_a_horn_seen_speaks_for_itself_besides() {
        for (Course.Step step : course(CHANGED, "foot.d").steps()) {
            AsBuiltAt sheet = built(step.serial());
            assertThat(step.likeliest()).isEqualTo(sheet.material());
            if (sheet.standing() == Standing.OBSERVED) {
                assertThat(sheet.probability()).isGreaterThan(step.of(step.likeliest()));
            } else {
                sheet.probabilities()
                        .forEach((material, chance) ->
                                assertThat(step.of(material)).isEqualTo(chance));
            }
        }
    }

    @Test
    void between_two_steps_it_is_the_straight_line() {
        Course course = course(CHANGED, "foot.d");
        double below = step(course, 41_000).of("felt");
        double above = step(course, 44_000).of("felt");
        AsBuiltAt between = built(42_000);
        assertThat(between.probabilities().get("felt")).isCloseTo(below + (above - below) / 3, within(1e-12));
    }

    private static AsBuiltAt built(long serial) {
        return Objects.requireNonNull(CHANGED.asBuilt(Voice.ALTO, serial).get("foot.d"));
    }

    private static Course.Step step(Course course, long serial) {
        return course.steps().stream()
                .filter(one -> one.serial() == serial)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void it_runs_from_end_to_end_and_names_materials_in_the_order_of_the_serials() {
        Course course = course(CHANGED, "foot.d");
        assertThat(course.steps().getFirst().serial()).isEqualTo(38_000);
        assertThat(course.steps().getLast().serial()).isEqualTo(50_000);
        assertThat(course.materials()).containsExactly("cork", "felt");
        assertThat(course.changes()).singleElement().satisfies(change -> {
            // three looks on either side leave the change wider than the gap between them
            assertThat(change.between().contains(new SerialRange(41_000, 44_000)))
                    .isTrue();
            assertThat(change.before()).isEqualTo("cork");
        });
    }

    @Test
    void a_place_nobody_looked_at_has_no_course() {
        assertThat(course(CHANGED, "foot.g").steps()).isEmpty();
        assertThat(course(CHANGED, "foot.g").marks()).isEmpty();
    }

    @Test
    void places_are_alike_when_the_same_horns_showed_the_same_and_else_not() {
        Archive two = archive(
                seen(39_000, "foot.d", "cork"),
                seen(39_000, "foot.e", "cork"),
                seen(40_000, "foot.d", "cork"),
                seen(40_000, "foot.e", "cork"),
                seen(40_000, "foot.f", "cork"));
        assertThat(course(two, "foot.d").isLike(course(two, "foot.e"))).isTrue();
        assertThat(course(two, "foot.d").isLike(course(two, "foot.f"))).isFalse();
        Archive differing = archive(seen(39_000, "foot.d", "cork"), seen(39_000, "foot.e", "felt"));
        assertThat(course(differing, "foot.d").isLike(course(differing, "foot.e")))
                .isFalse();
    }

    @Test
    void every_item_is_told_with_its_strength_and_why_it_is_set_aside() {
        Resolution aside = new Resolution("w-44000.foot.d", "the foot was replaced", "the bench", Edtf.parse("2026"));
        Archive resolved = new Archive(
                CHANGED.maker(), CHANGED.witnesses(), CHANGED.observations(), List.of(), List.of(aside), Map.of());
        List<Item> items = resolved.items(Voice.ALTO, "foot.d", 41_207);
        assertThat(items).extracting(Item::id).startsWith("w-39000.foot.d").hasSize(6);
        assertThat(items).allSatisfy(item -> assertThat(item.strength().value()).isEqualTo(3));
        assertThat(items)
                .filteredOn(item -> item.resolved() != null)
                .singleElement()
                .satisfies(item -> assertThat(item.resolved()).isEqualTo(aside));
    }
}
