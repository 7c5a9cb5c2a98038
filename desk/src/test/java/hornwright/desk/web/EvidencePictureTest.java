package hornwright.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.archive.Observation;
import hornwright.desk.bag.BagReader;
import hornwright.desk.picture.Camera;
import hornwright.desk.use.CheckShop;
import hornwright.desk.use.OpenShop;
import hornwright.desk.use.ShareArchive;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A picture or scan put in with what it shows: kept by its hash, without place or camera, and sent with the evidence. */
final class EvidencePictureTest extends ServedShop {
    private static final String EDGE = "edge-of-a-part";
    private static final Map<String, String> LOOK = Map.of(
            "means", "CLEAR_PHOTO",
            "hand", "FIRST",
            "interest", "NEUTRAL",
            "bearing", "DIRECT",
            "citation", "bench book 3",
            "m.lower-stack.foot", "leather",
            "p.lower-stack.foot", "foot.d");

    EvidencePictureTest() {
        super(OpenShop.FirstRun.DEMO);
    }

    @Test
    void a_picture_is_kept_with_the_look_shown_beside_it_and_sent_with_it() throws Exception {
        byte[] photo = Camera.photograph(new BufferedImage(60, 40, 1), 1, ByteOrder.BIG_ENDIAN);
        assertThat(send(LOOK, photo)).isEqualTo(303);
        Observation look =
                shop.archive().state().of("Tarrant & Loe").observations().getLast();
        String file = Objects.requireNonNull(look.file());
        assertThat(look.material()).isEqualTo("leather");
        assertThat(wire.get("/photo/" + file).status()).isEqualTo(200);
        assertThat(wire.get("/archive/place?voice=alto&serial=41207&place=foot.d")
                        .body())
                .contains("/photo/" + file);
        byte[] sent = BagReader.read(new ShareArchive(shop).pack(null))
                .file("photos/" + file + ".jpg")
                .orElseThrow();
        assertThat(new String(sent, StandardCharsets.ISO_8859_1)).doesNotContain("Exif", "SECRET");
        assertThat(new CheckShop(shop).check().faults()).isEmpty();
    }

    @Test
    void what_is_no_picture_and_a_name_nobody_keeps_are_refused_and_nothing_is_written() throws Exception {
        long before = shop.archive().seq();
        assertThat(send(LOOK, "<html>".getBytes(StandardCharsets.UTF_8))).isEqualTo(422);
        Map<String, String> named = new TreeMap<>(LOOK);
        named.put("file", "0".repeat(64));
        assertThat(send(named, new byte[0])).isEqualTo(422);
        assertThat(shop.archive().seq()).isEqualTo(before);
        assertThat(send(LOOK, new byte[0])).isEqualTo(303);
        assertThat(shop.archive()
                        .state()
                        .of("Tarrant & Loe")
                        .observations()
                        .getLast()
                        .file())
                .isNull();
    }

    private int send(Map<String, String> fields, byte[] picture) throws IOException, InterruptedException {
        Map<String, String> all = new TreeMap<>(fields);
        all.put("seq", "" + shop.archive().seq());
        all.put("key", "k" + picture.length + all.size() + shop.archive().seq());
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        for (Map.Entry<String, String> field : all.entrySet()) {
            body.write("--%s\r\nContent-Disposition: form-data; name=\"%s\"\r\n\r\n%s\r\n"
                    .formatted(EDGE, field.getKey(), field.getValue())
                    .getBytes(StandardCharsets.UTF_8));
        }
        String part = "form-data; name=\"picture\"; filename=\"a.jpg\"";
        body.write(
                "--%s\r\nContent-Disposition: %s\r\n\r\n".formatted(EDGE, part).getBytes(StandardCharsets.UTF_8));
        body.write(picture);
        body.write("\r\n--%s--\r\n".formatted(EDGE).getBytes(StandardCharsets.UTF_8));
        try (HttpClient client = HttpClient.newHttpClient()) {
            return client.send(
                            HttpRequest.newBuilder(URI.create(server.address() + "/archive/witness/w-41880/looks"))
                                    .header("Content-Type", "multipart/form-data; boundary=" + EDGE)
                                    .header("Origin", server.address())
                                    .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
                                    .build(),
                            HttpResponse.BodyHandlers.discarding())
                    .statusCode();
        }
    }
}
