package hornwright.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.archive.Fitting;
import hornwright.desk.use.OpenShop;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What fits, entered by a plain form and shown wherever such a part is missing. */
final class FitPagesTest extends ServedShop {
    private static final String CLAIM =
            "kind=ROLLER&part=brass+roller&size=4%2C0&stance=SUPPORTS&voice=ALTO&places=table.roller"
                    + "&from=41207&to=&means=MEASURED&hand=FIRST&interest=NEUTRAL&bearing=DIRECT&origin=horn+41207"
                    + "&citation=bench+book+3&file=&where=&terms=&when=";

    FitPagesTest() {
        super(OpenShop.FirstRun.DEMO);
    }

    private List<Fitting> fittings() {
        return shop.archive().state().of("Tarrant & Loe").fittings();
    }

    private String post(String address, String body) throws IOException {
        return wire.post(
                        address,
                        body + "&seq=" + shop.archive().seq() + "&key=k"
                                + shop.archive().seq())
                .body();
    }

    @Test
    void a_claim_is_kept_with_its_size_and_undone_by_one_edit() throws IOException {
        List<Fitting> before = fittings();
        assertThat(before)
                .isNotEmpty()
                .allSatisfy(demo -> assertThat(demo.part()).endsWith("(demo)"));
        post("/archive/fits", CLAIM);
        assertThat(fittings()).hasSize(before.size() + 1).last().satisfies(kept -> {
            assertThat(kept.sizeMm()).isEqualTo(4.0);
            assertThat(kept.places()).isNotEmpty().allMatch(place -> place.startsWith("roller."));
        });
        assertThat(wire.get("/archive/fits").body()).contains("brass roller, 4 mm", "C · indicated", "bench book 3");
        post("/archive/undo", "edit=" + shop.archive().seq());
        assertThat(fittings()).isEqualTo(before);
    }

    @Test
    void all_that_is_wrong_with_a_claim_is_said_at_once_and_what_was_typed_stays() throws IOException {
        long before = shop.archive().seq();
        String body = CLAIM.replace("part=brass+roller", "part=")
                .replace("places=table.roller", "places=table.spring")
                .replace("from=41207", "from=x")
                .replace("origin=horn+41207", "origin=")
                .replace("where=", "where=a+drawer");
        assertThat(post("/archive/fits", body))
                .contains(
                        "Say which part it is",
                        "Choose where a roller goes",
                        "Serials are digits",
                        "Name the origin",
                        "A search says where, for what and when",
                        "value=\"a drawer\"",
                        "value=\"bench book 3\"");
        assertThat(shop.archive().seq()).isEqualTo(before);
    }

    @Test
    void what_fits_is_offered_wherever_such_a_part_is_missing() throws IOException {
        String words = "nickel silver roller, 8 mm long (demo), 4 mm (C · indicated)";
        for (String page : List.of("survey", "plan", "keep")) {
            assertThat(wire.get("/horn/q-0001/" + page).body())
                    .as(page)
                    .contains("/horn/q-0001/instead/roller.low-e-flat", words);
        }
        assertThat(wire.get("/horn/q-0001/instead/roller.low-e-flat").body())
                .contains("C · indicated", "demo bench book 13");
        assertThat(wire.get("/stock").body())
                .contains("fits kid leather over woven wool felt, no deeper than 4.4 mm (demo)");
    }

    @Test
    void what_could_lie_at_a_place_is_told_with_its_becauses_and_can_be_decided() throws IOException {
        String page = wire.get("/horn/q-0001/instead/foot.d").body();
        assertThat(page).contains("Natural cork", "as built", "Woven wool felt", "later repairers commonly use it");
        String because = page.substring(page.indexOf("because?of=instead"));
        String address = because.substring(0, because.indexOf('"')).replace("&amp;", "&");
        assertThat(wire.get("/horn/q-0001/" + address).status()).isEqualTo(200);
        assertThat(wire.get("/horn/q-0001/instead/pad.d").body()).contains("A pad is chosen by its own window");
        assertThat(wire.get("/horn/q-0001/instead/nowhere").status()).isEqualTo(404);
    }
}
