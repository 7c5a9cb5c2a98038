package hornwright.desk.bag;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A folder of files with what is told about it. The same bag always gives the same bytes. Source: RFC 8493.
 *
 * @param info lines of bag-info.txt: who sends it, when, what it is
 * @param files by their path below the folder data, such as {@code photos/ab12.jpg}
 */
public record Bag(Map<String, String> info, SortedMap<String, byte[]> files) {
    static final String DECLARATION = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n";
    static final String DATA = "data/";
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    public Bag {
        info = Collections.unmodifiableMap(new TreeMap<>(info));
        files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
    }

    public Optional<byte[]> file(String path) {
        return Optional.ofNullable(files.get(path));
    }

    /** @param folder the one folder everything lies in */
    public byte[] zip(String folder) {
        SortedMap<String, byte[]> all = new TreeMap<>();
        files.forEach((path, bytes) -> all.put(DATA + path, bytes));
        SortedMap<String, byte[]> tags = new TreeMap<>();
        tags.put("bagit.txt", text(DECLARATION));
        tags.put("bag-info.txt", text(told()));
        tags.put("manifest-sha512.txt", text(manifest(all)));
        all.putAll(tags);
        all.put("tagmanifest-sha512.txt", text(manifest(tags)));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> file : all.entrySet()) {
                ZipEntry entry = new ZipEntry(folder + "/" + file.getKey());
                entry.setTimeLocal(NO_TIME);
                zip.putNextEntry(entry);
                zip.write(file.getValue());
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private String told() {
        long octets = files.values().stream().mapToLong(bytes -> bytes.length).sum();
        Map<String, String> lines = new TreeMap<>(info);
        lines.put("Payload-Oxum", octets + "." + files.size());
        return lines.entrySet().stream()
                .map(line -> line.getKey() + ": " + line.getValue().replaceAll("\\s+", " ") + "\n")
                .collect(Collectors.joining());
    }

    private static String manifest(SortedMap<String, byte[]> files) {
        return files.entrySet().stream()
                .map(file -> Sums.of("SHA-512", file.getValue()) + "  " + file.getKey() + "\n")
                .collect(Collectors.joining());
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
