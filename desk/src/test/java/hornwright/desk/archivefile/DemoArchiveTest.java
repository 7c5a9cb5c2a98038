package hornwright.desk.archivefile;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.archive.Grade;
import hornwright.bench.archive.NextLook;
import hornwright.bench.archive.SerialRange;
import hornwright.bench.archive.Witness;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Voice;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.engines.belief.Standing;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the invented archive says of the invented alto 41207. */
class DemoArchiveTest {
    private static final long SERIAL = 41207;
    private static final Archive ARCHIVE = ArchiveFile.demo();
    private static final Map<String, AsBuiltAt> BUILT = ARCHIVE.asBuilt(Voice.ALTO, SERIAL);

    private static AsBuiltAt at(String place) {
        return Objects.requireNonNull(BUILT.get(place), place);
    }

    @Test
    void fourteen_horns_were_looked_at_and_none_is_the_one_on_the_bench() {
        assertThat(ARCHIVE.witnesses()).hasSize(14).noneMatch(witness -> witness.serial() == SERIAL);
        assertThat(ARCHIVE.witnesses().stream().mapToLong(Witness::serial)).allMatch(s -> s > 38_000 && s < 61_000);
        assertThat(ARCHIVE.witnesses().stream().filter(Witness::isMixed))
                .extracting(Witness::id)
                .containsExactly("w-43350");
    }

    @Test
    void every_place_looked_at_is_a_place_of_the_alto_and_gets_a_probability_and_a_standing() {
        Keywork alto = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
        assertThat(BUILT).hasSizeGreaterThan(60).allSatisfy((place, built) -> {
            assertThat(alto.places().contains(place)).as(place).isTrue();
            assertThat(built.standing()).isEqualTo(Standing.INTERPOLATED);
            assertThat(built.probability()).isGreaterThan(0.8);
            assertThat(built.probabilities().values().stream()
                            .mapToDouble(p -> p)
                            .sum())
                    .isBetween(1 - 1e-9, 1 + 1e-9);
            assertThat(built.neighbours()).isNotNull();
            assertThat(Objects.requireNonNull(built.neighbours()).contains(SERIAL))
                    .isTrue();
        });
    }

    @Test
    void the_material_it_finds_likeliest_is_the_one_the_keywork_was_built_with() {
        Keywork alto = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
        assertThat(BUILT)
                .allSatisfy((place, built) -> assertThat(built.material())
                        .as(place)
                        .isEqualTo(alto.places().get(place).asBuilt().material()));
    }

    @Test
    void stack_feet_changed_from_cork_to_felt_between_two_horns_seen() {
        AsBuiltAt foot = at("foot.e");
        assertThat(foot.material()).isEqualTo("natural cork");
        AsBuiltAt.ChangeOver change = Objects.requireNonNull(foot.changeOver());
        assertThat(change.between()).isEqualTo(new SerialRange(44512, 46208));
        assertThat(change.before()).isEqualTo("natural cork");
        assertThat(change.after()).isEqualTo("woven wool felt");
        assertThat(change.probability()).isGreaterThanOrEqualTo(0.95);
        assertThat(foot.gradeInWords()).isEqualTo("B · well supported · 11 for, 0 against, 11 groups");
    }

    @Test
    void side_sleeves_changed_later_and_the_interval_holds_the_change() {
        AsBuiltAt sleeve = at("sleeve.side-c");
        assertThat(sleeve.material()).isEqualTo("plain cotton tubing");
        AsBuiltAt.ChangeOver change = Objects.requireNonNull(sleeve.changeOver());
        // one look short of certainty on either side: the interval is wider than the gap 49730 to 53962
        assertThat(change.between().contains(new SerialRange(49730, 53962))).isTrue();
        assertThat(change.after()).isEqualTo("rubberised cotton tubing");
    }

    @Test
    void no_other_place_changed() {
        assertThat(BUILT.entrySet().stream()
                        .filter(e -> e.getValue().changeOver() != null)
                        .map(Map.Entry::getKey))
                .allMatch(place -> Set.of(
                                "foot.d",
                                "foot.e",
                                "foot.f",
                                "foot.f-sharp",
                                "foot.g",
                                "foot.a",
                                "foot.bis",
                                "foot.b",
                                "foot.c-vent",
                                "sleeve.side-b-flat",
                                "sleeve.side-c")
                        .contains(place));
    }

    @Test
    void one_horn_contradicts_the_shellac_under_two_pads_and_is_not_explained_away() {
        for (String place : List.of("adhesive.d", "adhesive.e")) {
            assertThat(at(place).grade()).isEqualTo(Grade.CONTESTED);
            assertThat(at(place).material()).isEqualTo("shellac");
            assertThat(at(place).probability()).isLessThan(0.95);
        }
        assertThat(BUILT.values().stream().filter(built -> built.grade() == Grade.CONTESTED))
                .hasSize(2);
    }

    @Test
    void what_lies_between_horns_that_agree_is_never_established() {
        assertThat(BUILT.values()).noneMatch(built -> built.grade() == Grade.ESTABLISHED);
    }

    @Test
    void a_serial_beyond_every_horn_is_reported_at_most() {
        assertThat(ARCHIVE.asBuilt(Voice.ALTO, 70_000).values()).allSatisfy(built -> {
            assertThat(built.standing()).isEqualTo(Standing.EXTRAPOLATED);
            assertThat(built.grade().isAtLeast(Grade.INDICATED)).isFalse();
        });
    }

    @Test
    void a_place_nobody_looked_at_is_a_gap() {
        AsBuiltAt built = Objects.requireNonNull(
                ARCHIVE.asBuilt(Voice.ALTO, SERIAL, List.of("strap-ring")).get("strap-ring"));
        assertThat(built.isGap()).isTrue();
        assertThat(built.chanceInWords()).isEqualTo("nobody has looked at this place yet");
    }

    @Test
    void it_says_where_one_more_look_would_tell_most() {
        List<NextLook> next = ARCHIVE.nextLooks(Voice.ALTO, SERIAL, BUILT.keySet());
        assertThat(next.getFirst().place()).isEqualTo("adhesive.d");
        assertThat(next.getFirst().serials()).isEqualTo(new SerialRange(40912, 41629));
    }
}
