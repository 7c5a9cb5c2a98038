package hornwright.desk.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Every package says what lives in it and is checked for null. */
final class PackagesTest {
    @Test
    void every_package_of_the_program_has_a_page_of_its_own() {
        Set<Path> packages = Checkout.javaFiles("main").stream()
                .filter(file -> !file.endsWith("module-info.java"))
                .map(Path::getParent)
                .collect(Collectors.toSet());
        assertThat(packages).allSatisfy(folder -> {
            Path page = folder.resolve("package-info.java");
            assertThat(Files.exists(page)).as(page.toString()).isTrue();
            assertThat(Checkout.text(page))
                    .as(page.toString())
                    .contains("@NullMarked")
                    .contains("/**");
        });
    }

    @Test
    void no_placeholder_is_left() {
        assertThat(Checkout.javaFiles("main")).noneMatch(file -> file.endsWith("Unbuilt.java"));
    }
}
