package hornwright.bench.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import hornwright.bench.horn.Voice;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A sitting with a witness: strokes, and "the same as that other horn except what I say". */
class PaintingTest {
    private static final Witness OTHER = witness("w-1", 41_000);
    private static final Witness THIS = witness("w-2", 42_000);
    private static final How HOW = how("horn 42000");
    private static final Sight CORK = new Sight("natural cork", "light brown", 1.9, "shellac", null, null);
    private static final Sight FELT = new Sight("woven wool felt", "dark red", null, null, null, null);

    private static Witness witness(String id, long serial) {
        return new Witness(id, serial, Voice.ALTO, "Tarrant & Loe", "", null, Integrity.ORIGINAL, Map.of());
    }

    private static How how(String origin) {
        return new How(
                new Means.Examined(Method.SEEN, true),
                Hand.FIRST,
                Bearing.DIRECT,
                new Origin(origin, Kind.OBJECT),
                Interest.NEUTRAL,
                "page 7",
                null);
    }

    private static final Archive EMPTY = archive(List.of());

    private static Archive archive(List<Observation> seen) {
        return new Archive("Tarrant & Loe", List.of(OTHER, THIS), seen, List.of(), List.of(), Map.of());
    }

    private static Painting.Stroke stroke(Sight sight, String... places) {
        return new Painting.Stroke("feet", List.of(places), sight);
    }

    @Test
    void one_stroke_is_a_look_at_every_place_it_goes_over() {
        List<Observation> looks = new Painting(EMPTY, THIS, HOW).of(List.of(stroke(CORK, "foot.d", "foot.e")), null);
        assertThat(looks).extracting(Observation::place).containsExactly("foot.d", "foot.e");
        assertThat(looks).extracting(Observation::id).containsExactly("w-2.feet.foot.d", "w-2.feet.foot.e");
        assertThat(looks).allSatisfy(look -> {
            assertThat(look.thicknessAtLeastMm()).isEqualTo(1.9);
            assertThat(look.citation()).isEqualTo("page 7");
            assertThat(look.witness()).isEqualTo("w-2");
        });
    }

    @Test
    void the_same_as_another_horn_takes_over_all_but_what_is_painted_and_no_thickness() {
        List<Observation> other = new Painting(EMPTY, OTHER, how("horn 41000"))
                .of(List.of(stroke(CORK, "foot.d", "foot.e", "foot.f")), null);
        List<Observation> looks = new Painting(archive(other), THIS, HOW).of(List.of(stroke(FELT, "foot.e")), other);
        assertThat(looks)
                .extracting(Observation::place, Observation::material)
                .containsExactly(
                        tuple("foot.e", "woven wool felt"),
                        tuple("foot.d", "natural cork"),
                        tuple("foot.f", "natural cork"));
        assertThat(looks).allSatisfy(look -> {
            assertThat(look.thicknessAtLeastMm()).isNull();
            assertThat(look.origin().id()).isEqualTo("horn 42000");
        });
    }

    @Test
    void a_place_painted_again_keeps_its_id_so_that_the_later_word_stands() {
        List<Observation> first = new Painting(EMPTY, THIS, HOW).of(List.of(stroke(CORK, "foot.d")), null);
        List<Observation> again = new Painting(archive(first), THIS, HOW)
                .of(List.of(new Painting.Stroke("otherwise", List.of("foot.d"), FELT)), null);
        assertThat(again).extracting(Observation::id).isEqualTo(List.of("w-2.feet.foot.d"));
        List<Observation> fromPhotographs = new Painting(
                        archive(first),
                        THIS,
                        new How(
                                new Means.Pictured(true),
                                Hand.FIRST,
                                Bearing.DIRECT,
                                new Origin("photographs", Kind.PHOTO),
                                Interest.NEUTRAL,
                                null,
                                null))
                .of(List.of(new Painting.Stroke("photo", List.of("foot.d"), FELT)), null);
        assertThat(fromPhotographs).extracting(Observation::id).containsExactly("w-2.photo.foot.d");
    }

    @Test
    void a_place_in_two_strokes_is_looked_at_once() {
        assertThat(new Painting(EMPTY, THIS, HOW)
                        .of(List.of(stroke(CORK, "foot.d"), stroke(FELT, "foot.d", "foot.e")), null))
                .extracting(Observation::material)
                .containsExactly("natural cork", "woven wool felt");
    }
}
