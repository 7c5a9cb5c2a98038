package hornwright.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.survey.Photo;
import hornwright.desk.picture.Camera;
import hornwright.desk.use.CheckShop;
import hornwright.desk.use.OpenShop;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A photograph from the form of a telephone to the page and back out of sight. Source: OWASP ASVS 5.0.0, chapter 5. */
final class PhotosTest extends ServedShop {
    private static final String EDGE = "----edge";

    private String horn;

    PhotosTest() {
        super(OpenShop.FirstRun.EMPTY);
    }

    @BeforeEach
    void start() throws Exception {
        horn = newAlto();
    }

    @Test
    void a_photograph_of_the_list_is_kept_upright_and_shown_under_its_hash_only() throws Exception {
        assertThat(send(photograph(), "moment", "BEFORE", "shot", "serial").statusCode())
                .isEqualTo(303);
        Photo photo = photos().getFirst();
        assertThat(photo.shot()).isEqualTo("serial");
        assertThat(photo.width()).isEqualTo(40);
        assertThat(photo.height()).isEqualTo(60);
        HttpResponse<byte[]> file = get("/photo/" + photo.file());
        assertThat(file.statusCode()).isEqualTo(200);
        assertThat(file.headers().firstValue("Content-Type")).contains("image/jpeg");
        assertThat(file.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
        assertThat(file.headers().firstValue("Content-Security-Policy")).contains("default-src 'none'; sandbox");
        assertThat(file.headers().firstValue("Content-Disposition").orElseThrow())
                .startsWith("attachment");
        assertThat(new String(file.body(), StandardCharsets.ISO_8859_1)).doesNotContain("Exif", "GPS", "SECRET");
        String page = wire.get(horn + "/photos").body();
        assertThat(page).contains("1 of 30 of the list are taken", "/photo/" + photo.file(), "as it came");
    }

    @Test
    void a_name_that_is_no_hash_of_a_photograph_finds_nothing() throws Exception {
        for (String name : List.of("..%2f..%2fhornwright.db", "x", "0".repeat(64), "%00", "blobs")) {
            assertThat(wire.get("/photo/" + name).status()).as(name).isIn(400, 404);
        }
    }

    @Test
    void a_place_shows_what_was_taken_of_it_and_what_points_at_it() throws Exception {
        send(photograph(), "moment", "BEFORE", "place", "pad.d", "back", horn + "?place=pad.d#place-photos");
        send(photograph(), "moment", "AFTER", "shot", "lower-front");
        Photo stack = photos().getLast();
        String marking = horn + "/photos/" + stack.id() + "/mark";
        assertThat(mark(marking, "place=pad.d&at=0.25,0.5").status()).isEqualTo(303);
        assertThat(mark(marking, "place=pad.d&at=0.3,0.6").status()).isEqualTo(303);
        assertThat(photos().getLast().marks()).containsExactly(new Photo.Mark("pad.d", 0.3, 0.6));
        String panel = wire.get(horn + "/place/pad.d", "HX-Request: true").body();
        for (Photo photo : photos()) {
            assertThat(panel).contains(horn + "/photos/" + photo.id());
        }
        assertThat(mark(marking, "place=pad.d&at=1.5,0.5").status()).isEqualTo(422);
        assertThat(mark(marking, "place=pad.nowhere&at=0.5,0.5").status()).isEqualTo(422);
        assertThat(mark(marking, "place=pad.d&at=").status()).isEqualTo(303);
        assertThat(photos().getLast().marks()).isEmpty();
    }

    @Test
    void a_pin_and_a_sign_of_the_finish_have_their_photographs_beside_them_and_lead_to_each_other() throws Exception {
        String pin = "sort=dent&size=14+mm&near=bow&access=from+inside&choice=mend";
        assertThat(wire.post(horn + "/pins", pin + "&seq=" + seq()).status()).isEqualTo(303);
        String id = shop.jobNow(horn.replace("/horn/", "")).readings().current().stream()
                .map(reading -> reading.of())
                .filter(of -> of.startsWith("pin."))
                .findFirst()
                .orElseThrow();
        String body = wire.get(horn + "/body").body();
        assertThat(body).contains(horn + "/photos?of=" + id + "#put", "Photograph it");
        assertThat(wire.get(horn + "/photos?of=" + id).body())
                .contains("Photographs of: Dent on the bow", "name=\"place\" value=\"" + id + "\"", horn + "/body#");
        send(photograph(), "moment", "BEFORE", "place", id);
        send(photograph(), "moment", "BEFORE", "place", "finish.engraving");
        send(photograph(), "moment", "BEFORE", "place", "stamp.neck");
        assertThat(wire.get(horn + "/body").body())
                .contains(
                        photos().getFirst().small(),
                        horn + "/photos/" + photos().getFirst().id());
        String finish = wire.get(horn + "/finish").body();
        assertThat(finish).contains(photos().get(1).small(), photos().get(2).small());
        assertThat(send(photograph(), "moment", "BEFORE", "place", "pin.nowhere")
                        .statusCode())
                .isEqualTo(422);
    }

    @Test
    void one_subject_before_and_after_lies_side_by_side() throws Exception {
        send(photograph(), "moment", "BEFORE", "place", "pad.d");
        assertThat(wire.get(horn + "/photos").body()).contains("Not photographed since");
        send(
                Camera.photograph(new BufferedImage(64, 48, 1), 1, ByteOrder.BIG_ENDIAN),
                "moment",
                "AFTER",
                "place",
                "pad.d");
        assertThat(wire.get(horn + "/photos?look=place.pad.d").body())
                .contains("<b>Then</b>", "<b>Now</b>")
                .doesNotContain("Not photographed since");
    }

    @Test
    void out_of_sight_and_back_is_an_edit_and_its_undo() throws Exception {
        send(photograph(), "moment", "BEFORE", "shot", "serial");
        String id = photos().getFirst().id();
        wire.post(horn + "/photos/" + id + "/out", "seq=" + seq());
        assertThat(photos()).isEmpty();
        assertThat(wire.get(horn + "/photos/" + id).status()).isEqualTo(404);
        wire.post(horn + "/undo", "edit=" + seq());
        assertThat(photos()).hasSize(1);
        send(photograph(), "moment", "AFTER", "shot", "serial");
        wire.post(horn + "/undo", "edit=" + seq());
        assertThat(photos()).extracting(Photo::id).containsExactly(id);
    }

    @Test
    void several_are_kept_all_or_none_and_every_fault_is_told() throws Exception {
        HttpResponse<String> answer = send(
                List.of(photograph(), "RIFF....WEBPVP8 ".getBytes(StandardCharsets.US_ASCII), new byte[] {1, 2, 3}),
                "moment",
                "BEFORE");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("Photograph 2: That is a WebP picture", "Photograph 3: That file is no picture");
        assertThat(photos()).isEmpty();
        assertThat(send(List.of(photograph(), photograph()), "moment", "BEFORE").statusCode())
                .isEqualTo(303);
        assertThat(photos()).hasSize(2);
    }

    @Test
    void a_form_sent_twice_keeps_the_photograph_once() throws Exception {
        send(photograph(), "moment", "BEFORE", "key", "once");
        send(photograph(), "moment", "BEFORE", "key", "once");
        assertThat(photos()).hasSize(1);
    }

    @Test
    void nothing_chosen_and_an_unknown_shot_are_told_together() throws Exception {
        HttpResponse<String> answer = send(List.of(), "moment", "BEFORE", "shot", "moon");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("no photograph \"moon\" on the list").contains("No photograph was chosen");
    }

    @Test
    void only_the_photograph_page_takes_more_than_a_form() throws Exception {
        byte[] much = new byte[70_000];
        assertThat(sendTo(horn + "/survey", List.of(much)).statusCode()).isEqualTo(413);
        assertThat(sendTo("/theme", List.of(much)).statusCode()).isEqualTo(413);
    }

    @Test
    void check_counts_the_files_and_finds_one_that_is_changed() throws Exception {
        send(photograph(), "moment", "BEFORE", "shot", "serial");
        CheckShop.Report report = new CheckShop(shop).check();
        assertThat(report.files()).isEqualTo(2);
        assertThat(report.faults()).isEmpty();
        String name = photos().getFirst().file();
        Path file = folder.resolve("blobs").resolve(name.substring(0, 2)).resolve(name.substring(2));
        java.nio.file.Files.write(file, new byte[] {1});
        assertThat(new CheckShop(shop).check().faults()).anyMatch(fault -> fault.contains(name));
    }

    private Wire.Answer mark(String path, String form) throws IOException {
        return wire.post(path, form + "&seq=" + seq());
    }

    private long seq() {
        return shop.job(horn.replace("/horn/", "")).seq();
    }

    private List<Photo> photos() {
        return List.copyOf(
                shop.jobNow(horn.replace("/horn/", "")).keeping().photos().values());
    }

    /** Held on its side, 60 by 40 as stored. */
    private static byte[] photograph() {
        return Camera.photograph(new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB), 6, ByteOrder.LITTLE_ENDIAN);
    }

    private HttpResponse<String> send(byte[] photo, String... fields) throws Exception {
        return send(List.of(photo), fields);
    }

    private HttpResponse<String> send(List<byte[]> photos, String... fields) throws Exception {
        String[] all = Arrays.copyOf(fields, fields.length + 2);
        all[fields.length] = "seq";
        all[fields.length + 1] = Long.toString(seq());
        return sendTo(horn + "/photos", photos, all);
    }

    private HttpResponse<String> sendTo(String path, List<byte[]> photos, String... fields) throws Exception {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        for (int i = 0; i < fields.length; i += 2) {
            part(body, "name=\"%s\"".formatted(fields[i]), fields[i + 1].getBytes(StandardCharsets.UTF_8));
        }
        for (byte[] photo : photos) {
            part(body, "name=\"photos\"; filename=\"../../IMG 1.HEIC\"\r\nContent-Type: image/heic", photo);
        }
        body.writeBytes(("--" + EDGE + "--\r\n").getBytes(StandardCharsets.US_ASCII));
        try (HttpClient client = HttpClient.newHttpClient()) {
            return client.send(
                    HttpRequest.newBuilder(URI.create(server.address() + path))
                            .header("Origin", server.address())
                            .header("Content-Type", "multipart/form-data; boundary=" + EDGE)
                            .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
                            .build(),
                    HttpResponse.BodyHandlers.ofString());
        }
    }

    private static void part(ByteArrayOutputStream body, String disposition, byte[] content) {
        body.writeBytes("--%s\r\nContent-Disposition: form-data; %s\r\n\r\n"
                .formatted(EDGE, disposition)
                .getBytes(StandardCharsets.UTF_8));
        body.writeBytes(content);
        body.writeBytes("\r\n".getBytes(StandardCharsets.US_ASCII));
    }

    private HttpResponse<byte[]> get(String path) throws IOException, InterruptedException {
        try (HttpClient client = HttpClient.newHttpClient()) {
            return client.send(
                    HttpRequest.newBuilder(URI.create(server.address() + path)).build(),
                    HttpResponse.BodyHandlers.ofByteArray());
        }
    }
}
