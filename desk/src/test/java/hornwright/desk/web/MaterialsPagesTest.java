package hornwright.desk.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.material.Property;
import hornwright.bench.material.Standing;
import hornwright.bench.rules.Rule;
import hornwright.desk.use.OpenShop;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** The table of materials as a person sets and tests it, by plain forms. */
final class MaterialsPagesTest extends ServedShop {
    private static final String FELT = "material.woven-wool-felt.modulus_MPa";
    private static final String WEIGHED =
            "test=weight&material=woven+wool+felt&across=8&weight=200&free=3.02&loaded=2.61";

    MaterialsPagesTest() {
        super(OpenShop.FirstRun.EMPTY);
    }

    private Rule working() {
        return shop.house().state().measuredRules().get(FELT);
    }

    @Test
    void every_cell_has_a_value_and_a_ground() throws IOException {
        String page = wire.get("/materials").body();
        int cells = page.split("class=\"cell\"", -1).length - 1;
        assertThat(cells)
                .isEqualTo(shop.house().state().materials().table().size()
                        + shop.house().state().materials().padClasses().size()
                                * Property.ofPads().size());
        assertThat(page.split("typical, check yours", -1).length - 1).isEqualTo(cells);
    }

    @Test
    void a_test_outranks_what_is_set_and_taken_back_leaves_it_as_it_was() throws IOException {
        assertThat(wire.post("/materials", "rule=" + FELT + "&value=3").status())
                .isEqualTo(303);
        assertThat(working().value()).isEqualTo(3);
        assertThat(wire.post("/materials/test", WEIGHED).status()).isEqualTo(303);
        double pressure = 200 * 9.80665e-3 / (Math.PI / 4 * 64);
        double share = (3.02 - 2.61) / 3.02;
        assertThat(working().value()).isCloseTo(pressure / (share * share), within(1e-9));
        assertThat(working().u()).isPositive();
        assertThat(shop.house()
                        .state()
                        .materials()
                        .cell("woven wool felt", Property.MODULUS)
                        .standing())
                .isEqualTo(Standing.MEASURED);
        assertThat(wire.get("/materials").body()).contains("measured here").contains("Take back");
        long edit = shop.house().seq();
        assertThat(wire.post("/materials/undo", "edit=" + edit).status()).isEqualTo(303);
        assertThat(working().value()).isEqualTo(3);
        assertThat(wire.get("/materials").body()).doesNotContain("measured here");
    }

    @Test
    void what_was_tested_is_there_after_the_shop_was_closed() throws Exception {
        wire.post("/materials/test", WEIGHED);
        wire.post("/materials/test", "test=pad&class=medium&ring=28&weight=100&free=4.32&loaded=4.24");
        double felt = working().value();
        close();
        serve();
        assertThat(working().value()).isEqualTo(felt);
        assertThat(shop.house().state().materials().value("medium", Property.SEAT))
                .isCloseTo(100 * 9.80665e-3 / (Math.PI * 28 * 0.08), within(1e-9));
    }

    @Test
    void three_weights_on_a_ring_tell_skin_felt_and_where_the_felt_takes_over() throws IOException {
        String typed = "test=pad&class=soft&ring=28&free=4.32&weight=50&loaded=4.25&weight2=300&loaded2=4.13";
        assertThat(wire.post("/materials/test", typed + "&weight3=800").status())
                .isEqualTo(422);
        assertThat(wire.post("/materials/test", typed + "&weight3=800&loaded3=3.95")
                        .status())
                .isEqualTo(303);
        for (Property property : Property.ofPads()) {
            assertThat(shop.house().state().materials().cell("soft", property).standing())
                    .isEqualTo(Standing.MEASURED);
        }
        assertThat(wire.get("/materials").body()).contains("Soft pad on a ring of 28.0 mm: 4.32 mm free");
    }

    @Test
    void a_test_that_tells_nothing_keeps_nothing_and_says_what_would_help() throws IOException {
        Wire.Answer alike = wire.post("/materials/test", WEIGHED.replace("2.61", "3.01"));
        assertThat(alike.status()).isEqualTo(422);
        assertThat(alike.body()).contains("heavier weight").contains("value=\"3.01\"");
        Wire.Answer empty = wire.post("/materials/test", "test=weight&material=felt&across=&weight=x&free=&loaded=");
        assertThat(empty.status()).isEqualTo(422);
        assertThat(empty.body()).contains("Choose what it was done with", "Diameter of the disc", "Weight: grams");
        assertThat(shop.house().state().tests()).isEmpty();
    }

    @Test
    void a_figure_out_of_range_is_refused_in_its_own_cell() throws IOException {
        Wire.Answer answer = wire.post("/materials", "rule=" + FELT + "&value=9000");
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("A number from 0.1 to 200").contains("value=\"9000\"");
    }

    @Test
    void rebounds_counted_on_a_key_set_what_its_cork_gives_back() throws IOException {
        String horn = wire.post("/horns", "pattern=tarrant-loe-alto&serial=41207&use=WORKING")
                .header("Location");
        assertThat(wire.post(horn + "/lever/a/counted", "counts=3+3+2").status())
                .isEqualTo(303);
        assertThat(shop.house().state().tests()).hasSize(1);
        assertThat(shop.house()
                        .state()
                        .materials()
                        .cell("natural cork", Property.RESTITUTION)
                        .because())
                .contains("rebounds 3, 3, 2");
        assertThat(wire.post(horn + "/lever/a/counted", "counts=often").status())
                .isEqualTo(422);
        assertThat(wire.post(horn + "/lever/palm-d/counted", "counts=2").status())
                .isEqualTo(422);
    }
}
