package hornwright.desk.use;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.archive.Kind;
import hornwright.bench.archive.Means;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Origin;
import hornwright.bench.horn.Voice;
import hornwright.bench.job.Job;
import hornwright.bench.job.StreamName;
import hornwright.desk.journal.Hand;
import hornwright.desk.journal.Place;
import hornwright.desk.json.BadInput;
import hornwright.engines.belief.Standing;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A finding becomes evidence by one tap, and never by itself. */
final class OfferFindingsTest {
    private static final Hand HAND = new Hand("bench", "bench");

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private Shop shop;

    @BeforeEach
    void open() {
        shop = OpenShop.open(new OpenShop.Where.Folder(folder), OpenShop.FirstRun.DEMO, Place.CLOCK);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private Archive archive() {
        return shop.archive().state().of("Tarrant & Loe");
    }

    private Form form() {
        return new Form(shop.archive().seq(), HAND, "key " + shop.archive().seq());
    }

    @Test
    void findings_are_no_evidence_until_somebody_says_so() {
        assertThat(archive().observations()).noneMatch(look -> look.witness().startsWith("shelf-"));
        assertThat(new OfferFindings(shop).offerable(shop.jobNow("q-0001"))).isNotEmpty();
    }

    @Test
    void what_was_judged_original_joins_as_a_look_at_this_horn_and_is_offered_no_more() {
        OfferFindings offer = new OfferFindings(shop);
        Job job = shop.jobNow("q-0001");
        List<String> places = offer.offerable(job);
        assertThat(offer.offer("q-0001", form(), places)).isInstanceOf(Saved.Kept.class);
        List<Observation> looks = archive().observations().stream()
                .filter(look -> look.witness().equals("shelf-q-0001"))
                .toList();
        assertThat(looks).extracting(Observation::place).containsExactlyInAnyOrderElementsOf(places);
        assertThat(looks).allSatisfy(look -> assertThat(look.citation()).contains("q-0001"));
        assertThat(offer.offerable(shop.jobNow("q-0001"))).isEmpty();
        AsBuiltAt built =
                Objects.requireNonNull(archive().asBuilt(Voice.ALTO, 41207).get(places.getFirst()));
        assertThat(built.standing()).isEqualTo(Standing.OBSERVED);
    }

    @Test
    void one_undo_takes_it_out_again() {
        OfferFindings offer = new OfferFindings(shop);
        long before = shop.archive().seq();
        offer.offer("q-0001", form(), offer.offerable(shop.jobNow("q-0001")));
        new Undo(shop).undo(StreamName.ARCHIVE, form(), before + 2);
        assertThat(archive().observations()).noneMatch(look -> look.witness().startsWith("shelf-"));
    }

    @Test
    void a_place_nobody_judged_by_itself_is_refused() {
        assertThatThrownBy(() -> new OfferFindings(shop).offer("q-0001", form(), List.of("no-such-place")))
                .isInstanceOf(BadInput.class);
    }

    @Test
    void one_origin_is_of_one_kind() {
        Observation look = archive().observations().getFirst();
        Observation other = new Observation(
                look.id() + "-2",
                look.witness(),
                look.place(),
                look.material(),
                null,
                null,
                null,
                null,
                null,
                new Means.Rumoured(),
                look.hand(),
                look.bearing(),
                new Origin(look.origin().id(), Kind.HEARSAY),
                look.interest(),
                null,
                null);
        assertThatThrownBy(() -> new GrowArchive(shop).observe(form(), List.of(other)))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("of another kind");
    }
}
