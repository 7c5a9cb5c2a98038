package hornwright.desk.bag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A bag as it is sent and as it must not be. Source: RFC 8493; OWASP ASVS 5.0.0, 5.2.3 and 5.3.3. */
final class BagTest {
    private static Bag bag() {
        TreeMap<String, byte[]> files = new TreeMap<>();
        files.put("evidence.json", text("{}"));
        files.put("photos/ab12.jpg", new byte[] {1, 2, 3});
        return new Bag(Map.of("Source-Organization", "Quayside Winds"), files);
    }

    @Test
    void what_is_packed_is_unpacked_and_the_same_bag_is_the_same_file() {
        byte[] zip = bag().zip("winds");
        Bag read = BagReader.read(zip);
        assertThat(read.info()).isEqualTo(bag().info());
        assertThat(read.files().keySet()).isEqualTo(bag().files().keySet());
        read.files()
                .forEach((name, bytes) ->
                        assertThat(bytes).isEqualTo(bag().files().get(name)));
        assertThat(bag().zip("winds")).isEqualTo(zip);
    }

    @Test
    void it_holds_what_the_standard_asks_for() {
        Map<String, byte[]> files = Unzipped.of(bag().zip("winds"));
        assertThat(files.keySet())
                .contains(
                        "winds/bagit.txt",
                        "winds/bag-info.txt",
                        "winds/manifest-sha512.txt",
                        "winds/tagmanifest-sha512.txt",
                        "winds/data/evidence.json");
        assertThat(new String(files.get("winds/bagit.txt"), StandardCharsets.UTF_8))
                .isEqualTo("BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n");
        assertThat(new String(files.get("winds/bag-info.txt"), StandardCharsets.UTF_8))
                .contains("Payload-Oxum: 5.2");
        assertThat(new String(files.get("winds/manifest-sha512.txt"), StandardCharsets.UTF_8))
                .matches("(?s)([0-9a-f]{128}  data/[^\n]+\n){2}");
    }

    @Test
    void a_file_changed_lost_or_added_is_named() throws IOException {
        Map<String, byte[]> whole = Unzipped.of(bag().zip("winds"));
        for (String name : whole.keySet()) {
            Map<String, byte[]> changed = new LinkedHashMap<>(whole);
            changed.put(name, text(new String(whole.get(name), StandardCharsets.ISO_8859_1) + "x"));
            refused(zip(changed));
            if (!name.equals("winds/tagmanifest-sha512.txt")) {
                Map<String, byte[]> lost = new LinkedHashMap<>(whole);
                lost.remove(name);
                refused(zip(lost));
            }
        }
        Map<String, byte[]> added = new LinkedHashMap<>(whole);
        added.put("winds/data/more.txt", text("more"));
        assertThatThrownBy(() -> BagReader.read(zip(added))).hasMessageContaining("data/more.txt is in no manifest");
        Map<String, byte[]> fetching = new LinkedHashMap<>(whole);
        fetching.put("winds/fetch.txt", text("http://elsewhere.example/x 1 data/x"));
        assertThatThrownBy(() -> BagReader.read(zip(fetching))).hasMessageContaining("nothing is fetched");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../evil",
                "winds/../../evil",
                "/etc/passwd",
                "C:/evil",
                "winds\\..\\evil",
                "winds//evil",
                "winds/./evil",
                "winds/evil\u0000.jpg",
                "winds/\u001b[2J"
            })
    void a_name_that_leads_out_of_the_folder_is_refused(String name) throws IOException {
        assertThatThrownBy(() -> BagReader.read(zip(Map.of(name, text("x")))))
                .isInstanceOf(UnreadableBag.class)
                .hasMessageContaining("leads out of its folder");
    }

    @Test
    void a_file_that_grows_without_end_is_given_up_soon() throws IOException {
        byte[] bomb = zip(Map.of("winds/data/blank", new byte[300 << 20]));
        assertThat(bomb.length).isLessThan(400_000);
        long start = System.nanoTime();
        assertThatThrownBy(() -> BagReader.read(bomb)).hasMessageContaining("grows far beyond");
        assertThat(System.nanoTime() - start).isLessThan(2_000_000_000L);
    }

    @Test
    void more_files_than_a_person_can_mean_are_refused() throws IOException {
        Map<String, byte[]> many = new LinkedHashMap<>();
        for (int i = 0; i < 10_001; i++) {
            many.put("winds/data/" + i, new byte[0]);
        }
        assertThatThrownBy(() -> BagReader.read(zip(many))).hasMessageContaining("10,000 files");
    }

    @Test
    void what_is_no_bag_is_told_so() throws IOException {
        assertThatThrownBy(() -> BagReader.read(text("hello"))).hasMessageContaining("no zip");
        assertThatThrownBy(() -> BagReader.read(zip(Map.of("a/x", text("x"))))).hasMessageContaining("bagit.txt");
        assertThatThrownBy(() -> BagReader.read(zip(Map.of("a/x", text("x"), "b/x", text("x")))))
                .hasMessageContaining("side by side");
        byte[] whole = bag().zip("winds");
        refused(java.util.Arrays.copyOf(whole, whole.length / 2));
    }

    private static void refused(byte[] zip) {
        assertThatThrownBy(() -> BagReader.read(zip)).isInstanceOf(UnreadableBag.class);
    }

    private static byte[] zip(Map<String, byte[]> files) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue());
                zip.closeEntry();
            }
        }
        return out.toByteArray();
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
