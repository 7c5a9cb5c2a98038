package hornwright.desk.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The launcher on a copy of the sources, as on a fresh machine. */
@Tag("slow")
final class LauncherTest {
    private static final List<String> NEEDED = List.of("pom.xml", "hornwright", "scripts", "engines", "bench", "desk");

    @TempDir
    private Path copy;

    @Test
    void a_changed_class_is_never_hidden_by_the_start_up_cache() throws Exception {
        copySources();
        assertThat(launch("--version")).startsWith("hornwright 0.");
        Path before = cache();
        Path version = copy.resolve("desk/src/main/java/hornwright/desk/cli/Version.java");
        Files.writeString(
                version, Files.readString(version).replaceFirst("NUMBER = \"[^\"]+\"", "NUMBER = \"0.1.0-changed\""));
        Files.setLastModifiedTime(version, FileTime.from(Instant.now().plusSeconds(2)));
        assertThat(launch("--version")).startsWith("hornwright 0.1.0-changed");
        assertThat(cache()).isNotEqualTo(before);
    }

    private Path cache() throws IOException {
        try (Stream<Path> built = Files.list(copy.resolve(".build"))) {
            List<Path> caches =
                    built.filter(file -> file.toString().endsWith(".aot")).toList();
            assertThat(caches).hasSize(1);
            return caches.getFirst();
        }
    }

    private String launch(String argument) throws IOException, InterruptedException {
        Path log = copy.resolve("launcher.log");
        Process process = new ProcessBuilder(copy.resolve("hornwright").toString(), argument)
                .redirectError(log.toFile())
                .start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();
        assertThat(process.exitValue()).as(() -> Checkout.text(log)).isZero();
        return out;
    }

    private void copySources() throws IOException {
        for (String name : NEEDED) {
            try (Stream<Path> walk = Files.walk(Checkout.root().resolve(name))) {
                for (Path from : walk.filter(file -> !isBuilt(file)).toList()) {
                    Path to = copy.resolve(Checkout.root().relativize(from).toString());
                    if (Files.isDirectory(from)) {
                        Files.createDirectories(to);
                    } else {
                        Files.createDirectories(to.getParent());
                        Files.copy(from, to, java.nio.file.StandardCopyOption.COPY_ATTRIBUTES);
                    }
                }
            }
        }
    }

    private static boolean isBuilt(Path file) {
        return Stream.iterate(file, at -> at != null, Path::getParent).anyMatch(at -> at.endsWith("target"));
    }
}
