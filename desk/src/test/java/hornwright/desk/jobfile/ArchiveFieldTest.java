package hornwright.desk.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.archive.Grade;
import hornwright.desk.archivefile.ArchiveFile;
import hornwright.desk.json.BadInput;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** What a job file says of horns like the one on the bench. */
class ArchiveFieldTest {
    private static Map<String, AsBuiltAt> builtBy(String archive) {
        String text = "{\"keywork\": \"tarrant-loe-alto\", \"voice\": \"alto\", \"serial\": 41207, \"archive\": "
                + archive + "}";
        return JobFile.read(text).inputs().asBuilt();
    }

    @Test
    void the_demo_archive_answers_by_its_name() {
        AsBuiltAt foot = Objects.requireNonNull(builtBy("\"tarrant-loe\"").get("foot.e"));
        assertThat(foot.material()).isEqualTo("natural cork");
        assertThat(foot.grade()).isEqualTo(Grade.WELL_SUPPORTED);
    }

    @Test
    void an_archive_written_out_answers_the_same() {
        assertThat(builtBy(ArchiveFile.write(ArchiveFile.demo()))).isEqualTo(builtBy("\"tarrant-loe\""));
    }

    @Test
    void an_archive_of_another_maker_or_without_a_serial_is_refused() {
        assertThatThrownBy(() -> builtBy("{\"format\": \"hornwright-archive\", \"version\": 1, \"maker\": \"Nobody\"}"))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("this archive is of horns by Nobody");
        assertThatThrownBy(() -> JobFile.read(
                        "{\"keywork\": \"tarrant-loe-alto\", \"voice\": \"alto\", \"archive\": \"tarrant-loe\"}"))
                .hasMessageContaining("/archive: an archive answers for a serial");
        assertThatThrownBy(() -> builtBy("\"elsewhere\"")).hasMessageContaining("there is no archive \"elsewhere\"");
        assertThatThrownBy(() ->
                        builtBy("{\"format\": \"hornwright-archive\", \"version\": 1, \"maker\": \"Tarrant & Loe\","
                                + " \"observations\": [{\"id\": \"o\"}]}"))
                .hasMessageContaining("/archive/observations/0/witness");
    }
}
