package hornwright.desk.archivefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Observation;
import hornwright.desk.house.PublishedSchema;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Fault;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ArchiveFileTest {
    private static final String TEXT = ArchiveFile.demoText();

    private static List<Fault> faults(String from, String to) {
        String damaged = TEXT.replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to));
        assertThat(damaged).isNotEqualTo(TEXT);
        BadInput bad = catchThrowableOfType(BadInput.class, () -> ArchiveFile.read(damaged));
        return Objects.requireNonNull(bad, "no fault found").faults();
    }

    @Test
    void an_archive_survives_being_written_and_read_again() {
        Archive archive = ArchiveFile.demo();
        assertThat(ArchiveFile.read(ArchiveFile.write(archive))).isEqualTo(archive);
    }

    @Test
    void an_empty_archive_is_an_archive() {
        Archive archive = Archive.empty("Tarrant & Loe");
        assertThat(ArchiveFile.read(ArchiveFile.write(archive))).isEqualTo(archive);
    }

    @Test
    void one_entry_may_speak_of_several_places_that_looked_alike() {
        assertThat(ArchiveFile.demo().observations().stream()
                        .filter(look -> look.id().startsWith("w-38840.lower-feet."))
                        .map(Observation::place))
                .contains("foot.d", "foot.e", "foot.f");
    }

    @Test
    void an_observation_of_no_witness_is_refused() {
        assertThat(faults("\"witness\": \"w-38114\"", "\"witness\": \"w-1\""))
                .contains(new Fault("/observations/0/witness", "no witness is called \"w-1\"", "\"w-38114\""));
    }

    @Test
    void a_date_that_is_none_is_refused_with_an_example() {
        assertThat(faults("\"built\": \"1936~\"", "\"built\": \"the thirties\""))
                .anySatisfy(fault -> {
                    assertThat(fault.pointer()).isEqualTo("/witnesses/0/built");
                    assertThat(fault.what()).contains("is not a date");
                    assertThat(fault.example()).isEqualTo("\"built\": \"1925~\"");
                });
    }

    @Test
    void an_id_that_stands_twice_is_refused() {
        assertThat(faults("\"id\": \"w-38840\", \"serial\"", "\"id\": \"w-38114\", \"serial\""))
                .anySatisfy(fault -> assertThat(fault.pointer()).isEqualTo("/witnesses/4/id"));
        assertThat(faults("\"id\": \"w-38840.lower-feet\"", "\"id\": \"w-38114.lower-feet\""))
                .anySatisfy(fault -> assertThat(fault.what()).contains("stands twice"));
    }

    @Test
    void an_origin_of_two_kinds_is_refused() {
        assertThat(faults("\"origin\": \"workshop papers\"", "\"origin\": \"horn 38114\""))
                .anySatisfy(fault -> assertThat(fault.what())
                        .isEqualTo("\"horn 38114\" is a horn examined elsewhere and a paper of the time here"));
    }

    @Test
    void a_word_that_is_none_of_the_choices_is_refused_with_all_of_them() {
        assertThat(faults("\"integrity\": \"original\"", "\"integrity\": \"mint\""))
                .anySatisfy(fault -> assertThat(fault.what()).contains("original, altered, unknown"));
        assertThat(faults("\"kind\": \"horn examined\"", "\"kind\": \"a feeling\""))
                .anySatisfy(fault -> assertThat(fault.what()).contains("horn examined", "hearsay"));
    }

    @Test
    void a_resolution_of_nothing_is_refused() {
        assertThat(faults("\"evidence\": \"w-43105.upper-feet.2\"", "\"evidence\": \"e-1\""))
                .contains(new Fault(
                        "/resolutions/0/evidence",
                        "nothing here has the id \"e-1\"",
                        "the id of an observation or statement"));
    }

    @Test
    void a_row_of_years_that_cannot_stand_is_refused_with_an_example() {
        assertThat(faults("\"year\": \"1937\"", "\"year\": \"1937/..\""))
                .contains(new Fault("/years/1/year", "a row needs both ends of its year", "\"year\": \"1937/1939\""));
        assertThat(faults("\"serial\": 40300, \"year\"", "\"serial\": 38000, \"year\""))
                .anySatisfy(fault -> assertThat(fault.what()).isEqualTo("serial 38000 has a row already"));
    }

    @Test
    void the_published_schema_says_what_the_reader_says() {
        PublishedSchema schema = PublishedSchema.of("archive");
        assertThat(schema.against(TEXT)).isEmpty();
        assertThat(schema.against(ArchiveFile.write(ArchiveFile.demo()))).isEmpty();
        assertThat(List.of(
                        TEXT.replace("\"integrity\": \"original\"", "\"integrity\": \"mint\""),
                        TEXT.replace("\"serial\": 38114", "\"serial\": \"38114\""),
                        TEXT.replace("\"method\": \"measured\"", "\"method\": \"guessed\""),
                        TEXT.replace("\"witnesses\"", "\"horns\"")))
                .allSatisfy(text -> assertThat(schema.against(text)).isNotEmpty());
    }
}
