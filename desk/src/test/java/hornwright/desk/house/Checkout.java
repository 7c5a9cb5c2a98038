package hornwright.desk.house;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The source tree the tests run in. */
public final class Checkout {
    private static final List<String> MODULES = List.of("engines", "bench", "desk", "browser", "benchmarks");

    private Checkout() {}

    public static Path root() {
        Path here = Path.of("").toAbsolutePath();
        while (here != null && !Files.exists(here.resolve("scripts/jdk.sh"))) {
            here = here.getParent();
        }
        if (here == null) {
            throw new IllegalStateException("the tests must run inside the source tree");
        }
        return here;
    }

    /** All Java files under src/main or src/test of every module. */
    public static List<Path> javaFiles(String sourceSet) {
        return MODULES.stream()
                .map(module ->
                        root().resolve(module).resolve("src").resolve(sourceSet).resolve("java"))
                .filter(Files::isDirectory)
                .flatMap(folder -> files(folder, ".java").stream())
                .toList();
    }

    /** All files below {@code folder} whose name ends so, in a steady order. */
    public static List<Path> files(Path folder, String ending) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(file -> file.getFileName().toString().endsWith(ending))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
