package hornwright.desk.use;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;

/** Tells one build of the program from another: names, sizes and times of all jars it runs from. */
final class ProgramStamp {
    private static final Optional<String> STAMP = of(System.getProperty("java.class.path", ""));

    private ProgramStamp() {}

    /** Empty when the program does not run from jars alone, so that nobody can say whether it is the same. */
    static Optional<String> stamp() {
        return STAMP;
    }

    static Optional<String> of(String classPath) {
        List<File> entries = Arrays.stream(classPath.split(File.pathSeparator))
                .filter(entry -> !entry.isEmpty())
                .map(File::new)
                .toList();
        return !entries.isEmpty() && entries.stream().allMatch(File::isFile)
                ? Optional.of(digest(entries.stream()
                        .map(jar -> jar.getName() + ' ' + jar.length() + ' ' + jar.lastModified())
                        .collect(Collectors.joining("\n"))))
                : Optional.empty();
    }

    private static String digest(String text) {
        return UUID.nameUUIDFromBytes(text.getBytes(StandardCharsets.UTF_8)).toString();
    }
}
