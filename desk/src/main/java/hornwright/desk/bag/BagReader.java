package hornwright.desk.bag;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Reads a bag and checks every sum in it. A bag with one fault is refused with all of them. Source: RFC 8493, 3. */
public final class BagReader {
    private static final Map<String, String> ALGORITHMS = Map.of("sha512", "SHA-512", "sha256", "SHA-256");

    private final Map<String, byte[]> all;
    private final List<String> faults = new ArrayList<>();

    private BagReader(Map<String, byte[]> all) {
        this.all = all;
    }

    public static Bag read(byte[] zip) {
        return new BagReader(withinItsFolder(Unzipped.of(zip))).bag();
    }

    private static Map<String, byte[]> withinItsFolder(Map<String, byte[]> files) {
        Set<String> folders = files.keySet().stream()
                .map(name -> name.replaceFirst("/.*", "/"))
                .collect(Collectors.toSet());
        String folder = folders.size() == 1 ? folders.iterator().next() : "";
        if (!folder.endsWith("/")) {
            throw new UnreadableBag("A bag is one folder; this zip holds " + folders.size() + " things side by side.");
        }
        Map<String, byte[]> within = new TreeMap<>();
        files.forEach((name, bytes) -> within.put(name.substring(folder.length()), bytes));
        return within;
    }

    private Bag bag() {
        String declared = text("bagit.txt");
        if (!declared.startsWith("BagIt-Version: 1.0") && !declared.startsWith("BagIt-Version: 0.97")) {
            throw new UnreadableBag("There is no bagit.txt of version 1.0, so this is no bag.");
        }
        if (all.containsKey("fetch.txt")) {
            faults.add("The bag asks to fetch files from elsewhere; nothing is fetched.");
        }
        boolean summed = false;
        for (Map.Entry<String, String> algorithm : ALGORITHMS.entrySet()) {
            String manifest = "manifest-" + algorithm.getKey() + ".txt";
            if (all.containsKey(manifest)) {
                summed = true;
                check(manifest, algorithm.getValue(), Bag.DATA);
            }
            if (all.containsKey("tag" + manifest)) {
                check("tag" + manifest, algorithm.getValue(), "");
            }
        }
        if (!summed) {
            faults.add("The bag has no manifest of SHA-512 or SHA-256.");
        }
        Map<String, String> info = info();
        SortedMap<String, byte[]> files = payload();
        checkOxum(info.getOrDefault("Payload-Oxum", ""), files);
        if (!faults.isEmpty()) {
            throw new UnreadableBag(faults);
        }
        info.remove("Payload-Oxum");
        return new Bag(info, files);
    }

    /** Every file under {@code folder} is in the manifest and every one of the manifest is there and as it was. */
    private void check(String manifest, String algorithm, String folder) {
        Set<String> told = new HashSet<>();
        for (String line : text(manifest).lines().filter(one -> !one.isBlank()).toList()) {
            String[] parts = line.strip().split("\\s+\\*?", 2);
            String name = parts.length < 2 ? "" : parts[1];
            byte[] bytes = all.get(name);
            if (!told.add(name) || !name.startsWith(folder)) {
                faults.add("%s tells \"%s\" twice or out of place.".formatted(manifest, name));
            } else if (bytes == null) {
                faults.add("The file %s is missing.".formatted(name));
            } else if (!Sums.of(algorithm, bytes).equalsIgnoreCase(parts[0])) {
                faults.add("The file %s is not as it was sent.".formatted(name));
            }
        }
        if (!folder.isEmpty()) {
            all.keySet().stream()
                    .filter(name -> name.startsWith(folder) && !told.contains(name))
                    .forEach(name -> faults.add("The file %s is in no manifest.".formatted(name)));
        }
    }

    private void checkOxum(String oxum, Map<String, byte[]> files) {
        long octets = files.values().stream().mapToLong(bytes -> bytes.length).sum();
        if (!oxum.isEmpty() && !oxum.equals(octets + "." + files.size())) {
            faults.add(
                    "The bag says it holds %s octets and files; it holds %d.%d.".formatted(oxum, octets, files.size()));
        }
    }

    private Map<String, String> info() {
        Map<String, String> info = new TreeMap<>();
        text("bag-info.txt")
                .lines()
                .map(line -> line.split(":\\s*", 2))
                .filter(line -> line.length == 2)
                .forEach(line -> info.put(line[0], line[1]));
        return info;
    }

    private SortedMap<String, byte[]> payload() {
        TreeMap<String, byte[]> files = new TreeMap<>();
        all.forEach((name, bytes) -> {
            if (name.startsWith(Bag.DATA)) {
                files.put(name.substring(Bag.DATA.length()), bytes);
            }
        });
        return files;
    }

    private String text(String name) {
        byte[] bytes = all.get(name);
        return bytes == null ? "" : new String(bytes, StandardCharsets.UTF_8);
    }
}
