package hornwright.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.survey.StoredPart;
import hornwright.desk.use.OpenShop;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** A removed original from the horn to its bag and back. */
final class KeptTest extends ServedShop {
    private static final String HORN = "/horn/q-0001";

    KeptTest() {
        super(OpenShop.FirstRun.DEMO);
    }

    @Test
    void what_is_put_by_is_kept_with_its_store_and_shown_at_its_place() throws IOException {
        String form = "place=pad.d&place=pad.e&other=foot.d&what=cork+foot&store=drawer+4&seq=" + seq();
        assertThat(wire.post(HORN + "/kept", form).status()).isEqualTo(303);
        assertThat(shop.jobNow("q-0001").keeping().parts())
                .containsKeys("pad.low-b", "pad.d", "pad.e", "foot.d")
                .hasSize(4);
        assertThat(shop.jobNow("q-0001").keeping().parts().values())
                .extracting(StoredPart::what)
                .contains("cork foot");
        assertThat(wire.get(HORN + "/place/pad.d", "HX-Request: true").body()).contains("Original kept", "in drawer 4");
        assertThat(wire.get(HORN + "/kept").body()).contains("drawer 4", "drawer 3, box 41207");
        wire.post(HORN + "/kept/out", "place=pad.d&seq=" + seq());
        assertThat(shop.jobNow("q-0001").keeping().parts()).doesNotContainKey("pad.d");
        wire.post(HORN + "/undo", "edit=" + seq());
        assertThat(shop.jobNow("q-0001").keeping().parts()).containsKey("pad.d");
    }

    @Test
    void a_form_without_a_store_or_a_part_is_told_both_and_keeps_nothing() throws IOException {
        Wire.Answer answer = wire.post(HORN + "/kept", "store=+&seq=" + seq());
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("Nothing is chosen to be put by.", "Say where they lie");
        assertThat(shop.jobNow("q-0001").keeping().parts()).hasSize(1);
    }

    @Test
    void labels_of_bags_and_trays_name_the_parts_and_never_the_owner() throws Exception {
        String bags = text(HORN + "/labels.pdf");
        assertThat(bags).contains("Low B pad", "drawer 3, box 41207", "q-0001 pad.low-b");
        String trays = text(HORN + "/labels.pdf?of=trays&size=letter");
        assertThat(trays).contains("Lower stack, tray", "bags ");
        assertThat(bags + trays).doesNotContain("Harbour", "Ferry Lane", "Lock Street");
        assertThat(wire.get("/horn/q-0003/labels.pdf").status()).isEqualTo(404);
    }

    private long seq() {
        return shop.job("q-0001").seq();
    }

    private String text(String path) throws Exception {
        try (HttpClient client = HttpClient.newHttpClient()) {
            HttpResponse<byte[]> answer = client.send(
                    HttpRequest.newBuilder(URI.create(server.address() + path)).build(),
                    HttpResponse.BodyHandlers.ofByteArray());
            assertThat(answer.headers().firstValue("Content-Type")).contains("application/pdf");
            try (var document = Loader.loadPDF(answer.body())) {
                return new PDFTextStripper().getText(document);
            }
        }
    }
}
