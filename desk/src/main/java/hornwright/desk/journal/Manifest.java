package hornwright.desk.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The SHA-256 of every file in a folder, in the form the common checking program reads: hash, two blanks, path. */
final class Manifest {
    private static final String NAME = "manifest-sha256.txt";

    private Manifest() {}

    static void write(Path folder) throws IOException {
        List<String> lines = new ArrayList<>();
        for (String file : files(folder)) {
            lines.add(hash(folder.resolve(file)) + "  " + file + "\n");
        }
        Files.writeString(folder.resolve(NAME), String.join("", lines));
    }

    /** What is not as it was written, file by file, in words. */
    static List<String> faults(Path folder) throws IOException {
        if (!Files.exists(folder.resolve(NAME))) {
            return List.of("There is no %s in %s, so this is no whole backup.".formatted(NAME, folder));
        }
        Map<String, String> written = new LinkedHashMap<>();
        for (String line : Files.readAllLines(folder.resolve(NAME))) {
            String[] parts = line.split("  ", 2);
            if (parts.length != 2) {
                return List.of("The line '%s' of %s is not one it was written with.".formatted(line, NAME));
            }
            written.put(parts[1], parts[0]);
        }
        List<String> faults = new ArrayList<>();
        Set<String> all = new TreeSet<>(written.keySet());
        Set<String> there = files(folder);
        all.addAll(there);
        for (String file : all) {
            if (!there.contains(file)) {
                faults.add("The file %s is missing.".formatted(file));
            } else if (!written.containsKey(file)) {
                faults.add("The file %s was not written with this backup.".formatted(file));
            } else if (!hash(folder.resolve(file)).equals(written.get(file))) {
                faults.add("The file %s is not as it was written.".formatted(file));
            }
        }
        return faults;
    }

    private static Set<String> files(Path folder) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString().replace('\\', '/'))
                    .filter(name -> !name.equals(NAME))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private static String hash(Path file) throws IOException {
        return Blob.nameOf(Files.readAllBytes(file));
    }
}
