package hornwright.desk.archivefile;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.archive.Grade;
import hornwright.bench.archive.Item;
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
import java.util.stream.Collectors;
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
    void sixty_horns_were_looked_at_and_none_is_the_one_on_the_bench() {
        assertThat(ARCHIVE.witnesses()).hasSize(60).noneMatch(witness -> witness.serial() == SERIAL);
        assertThat(ARCHIVE.witnesses().stream().filter(witness -> witness.voice() == Voice.TENOR))
                .hasSize(8);
        assertThat(ARCHIVE.witnesses().stream().mapToLong(Witness::serial)).allMatch(s -> s > 38_000 && s < 61_000);
        assertThat(ARCHIVE.witnesses().stream().filter(Witness::isMixed))
                .extracting(Witness::id)
                .containsExactly("w-42760", "w-43350", "w-47455");
    }

    @Test
    void the_horn_that_looks_forged_weighs_little_and_moves_nothing() {
        assertThat(ARCHIVE.items(Voice.ALTO, "foot.e", 42_760))
                .filteredOn(item -> item.id().startsWith("w-42760"))
                .singleElement()
                .satisfies(item -> {
                    assertThat(item.material()).isEqualTo("woven wool felt");
                    assertThat(item.strength().value()).isZero();
                });
        AsBuiltAt foot =
                Objects.requireNonNull(ARCHIVE.asBuilt(Voice.ALTO, 42_760).get("foot.e"));
        assertThat(foot.material()).isEqualTo("natural cork");
    }

    @Test
    void a_recording_printed_again_counts_once() {
        List<Item> told = ARCHIVE.items(Voice.ALTO, "foot.e", 48_000).stream()
                .filter(item -> item.evidence().origin().id().equals("the foreman, as recorded"))
                .toList();
        assertThat(told).hasSize(2);
        Archive once = new Archive(
                ARCHIVE.maker(),
                ARCHIVE.witnesses(),
                ARCHIVE.observations(),
                ARCHIVE.statements().stream()
                        .filter(said -> !said.evidence().id().startsWith("foreman-again"))
                        .toList(),
                ARCHIVE.resolutions(),
                ARCHIVE.searches());
        AsBuiltAt twice =
                Objects.requireNonNull(ARCHIVE.asBuilt(Voice.ALTO, 48_000).get("foot.e"));
        AsBuiltAt single =
                Objects.requireNonNull(once.asBuilt(Voice.ALTO, 48_000).get("foot.e"));
        assertThat(twice.grade()).isEqualTo(single.grade());
        assertThat(twice.grading().groups()).isEqualTo(single.grading().groups());
        assertThat(twice.grading().supporting()).isEqualTo(single.grading().supporting() + 1);
    }

    @Test
    void the_felt_over_the_first_cork_is_set_aside_in_writing_and_stays_visible() {
        assertThat(at("foot.a").grade()).isEqualTo(Grade.WELL_SUPPORTED);
        assertThat(ARCHIVE.items(Voice.ALTO, "foot.a", SERIAL))
                .filteredOn(item -> item.resolved() != null)
                .singleElement()
                .satisfies(item -> assertThat(item.material()).isEqualTo("woven wool felt"));
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
                    .as("what nobody has seen keeps a little where all looks agree")
                    .isBetween(built.probabilities().size() == 1 ? 0.95 : 1 - 1e-9, 1 + 1e-9);
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
    void stack_feet_changed_from_cork_to_felt_through_a_time_in_which_the_works_used_both() {
        AsBuiltAt foot = at("foot.e");
        assertThat(foot.material()).isEqualTo("natural cork");
        assertThat(foot.habit()).isNull();
        AsBuiltAt.ChangeOver change = Objects.requireNonNull(foot.changeOver());
        assertThat(change.between().contains(45_310)).isTrue();
        assertThat(change.before()).isEqualTo("natural cork");
        assertThat(change.after()).isEqualTo("natural cork and woven wool felt");
        assertThat(foot.gradeInWords())
                .isEqualTo("well supported (grade B): 23 looks for it, 3 against, from 26 origins");
        AsBuiltAt then =
                Objects.requireNonNull(ARCHIVE.asBuilt(Voice.ALTO, 45_700).get("foot.e"));
        assertThat(Objects.requireNonNull(then.habit()).inWords())
                .startsWith("the works used both natural cork and woven wool felt between 45310 and 46208, about ");
        AsBuiltAt later =
                Objects.requireNonNull(ARCHIVE.asBuilt(Voice.ALTO, 50_000).get("foot.e"));
        assertThat(later.material()).isEqualTo("woven wool felt");
        assertThat(later.habit()).isNull();
    }

    @Test
    void side_sleeves_changed_later_and_the_interval_holds_the_change() {
        AsBuiltAt sleeve = at("sleeve.side-c");
        assertThat(sleeve.material()).isEqualTo("plain cotton tubing");
        AsBuiltAt.ChangeOver change = Objects.requireNonNull(sleeve.changeOver());
        assertThat(change.between()).isEqualTo(new SerialRange(51612, 52018));
        assertThat(change.after()).isEqualTo("rubberised cotton tubing");
    }

    @Test
    void four_change_overs_and_no_more() {
        Map<String, Long> where = Map.of("foot", 45_310L, "link", 48_400L, "sleeve", 51_800L, "guard", 55_400L);
        Map<String, List<AsBuiltAt.ChangeOver>> changes = BUILT.values().stream()
                .filter(built -> built.changeOver() != null)
                .collect(Collectors.groupingBy(
                        built -> built.place().replaceFirst("\\..*", ""),
                        Collectors.mapping(built -> Objects.requireNonNull(built.changeOver()), Collectors.toList())));
        assertThat(changes).containsOnlyKeys(where.keySet());
        changes.forEach((kind, all) -> assertThat(all)
                .as(kind)
                .allMatch(change -> change.between().contains(Objects.requireNonNull(where.get(kind)))));
    }

    @Test
    void one_horn_contradicts_the_shellac_under_two_pads_and_is_not_explained_away() {
        for (String place : List.of("adhesive.d", "adhesive.e")) {
            assertThat(at(place).grade()).isEqualTo(Grade.CONTESTED);
            assertThat(at(place).material()).isEqualTo("shellac");
            assertThat(at(place).probability()).isLessThan(at("adhesive.g").probability() - 0.01);
        }
        assertThat(BUILT.values().stream().filter(built -> built.grade() == Grade.CONTESTED))
                .extracting(AsBuiltAt::place)
                .containsExactlyInAnyOrder("adhesive.d", "adhesive.e", "link.f-sharp-to-bis");
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
                ARCHIVE.asBuilt(Voice.ALTO, SERIAL, List.of("neck-screw")).get("neck-screw"));
        assertThat(built.isGap()).isTrue();
        assertThat(built.chanceInWords()).isEqualTo("nobody has looked at this place yet");
    }

    @Test
    void it_says_where_one_more_look_would_tell_most() {
        List<NextLook> next = ARCHIVE.nextLooks(Voice.ALTO, SERIAL, BUILT.keySet());
        assertThat(next.getFirst().place()).startsWith("adhesive.");
        assertThat(next)
                .filteredOn(look -> look.place().equals("foot.g"))
                .extracting(NextLook::serials)
                .containsExactly(new SerialRange(45181, 45309));
        assertThat(next)
                .filteredOn(look -> look.place().equals("adhesive.d"))
                .extracting(NextLook::serials)
                .containsExactly(new SerialRange(40912, 41629));
    }
}
