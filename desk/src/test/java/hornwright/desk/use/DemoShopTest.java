package hornwright.desk.use;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Voice;
import hornwright.bench.job.Job;
import hornwright.bench.job.MaterialsFound;
import hornwright.bench.job.ReadingTaken;
import hornwright.bench.stock.StockKind;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.desk.archivefile.ArchiveFile;
import hornwright.desk.journal.Card;
import hornwright.desk.journal.EditLine;
import hornwright.desk.journal.Place;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class DemoShopTest {
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

    @Test
    void the_first_run_finds_three_horns_a_shelf_of_goods_and_an_archive() {
        assertThat(shop.house().state().name()).isEqualTo("Quayside Winds");
        assertThat(new Shelf(shop).all())
                .extracting(Card::title)
                .containsExactlyInAnyOrder(
                        "alto 41207 by Tarrant & Loe", "tenor 43118 by Tarrant & Loe", "alto 39862 by Tarrant & Loe");
        assertThat(shop.stock().state().of(StockKind.PAD)).hasSizeGreaterThan(60);
        assertThat(shop.archive().state().of("Tarrant & Loe").witnesses()).hasSize(60);
        assertThat(shop.archive().state().of("Tarrant & Loe").asBuilt(Voice.ALTO, 41207))
                .isNotEmpty();
    }

    @Test
    void the_second_run_adds_nothing() {
        long seq = shop.job("q-0001").seq();
        close();
        open();
        assertThat(shop.job("q-0001").seq()).isEqualTo(seq);
        assertThat(new Shelf(shop).all()).hasSize(3);
    }

    @Test
    void the_alto_is_half_measured() {
        Job alto = shop.jobNow("q-0001");
        assertThat(alto.stage()).isEqualTo(Stage.STRIPPED);
        assertThat(count(alto, ReadingKind.CUP_INSIDE)).isEqualTo(48);
        assertThat(count(alto, ReadingKind.FRONT_HEIGHT)).isEqualTo(10);
        assertThat(count(alto, ReadingKind.CUP_DEPTH)).isBetween(8L, 16L);
        assertThat(alto.findings().groups()).hasSize(44);
        assertThat(alto.readings().at(Stage.ARRIVAL)).hasSize(58);
    }

    @Test
    void every_reading_and_finding_is_of_something_its_horn_has() {
        for (String file : List.of("alto", "tenor", "odd")) {
            List<EditLine> lines = DemoShop.lines(file);
            Keywork keywork = Keyworks.of(shop.jobNow(lines.getFirst().stream().jobId()));
            for (EditLine line : lines) {
                switch (line.edit()) {
                    case ReadingTaken taken ->
                        assertThat(has(keywork, taken.reading()))
                                .as(taken.inWords())
                                .isTrue();
                    case MaterialsFound found ->
                        assertThat(found.places()).extracting(Finding::place).allMatch(keywork.places()::contains);
                    default -> {}
                }
            }
        }
    }

    @Test
    void the_archive_speaks_of_places_the_alto_has() {
        Keywork alto = Keyworks.named("tarrant-loe-alto");
        assertThat(shop.archive().state().of("Tarrant & Loe").observations())
                .hasSizeGreaterThan(500)
                .allMatch(seen -> alto.places().contains(seen.place()));
    }

    @Test
    void the_archive_folded_from_its_edits_is_the_file_it_came_from() {
        assertThat(shop.archive().state().of("Tarrant & Loe")).isEqualTo(ArchiveFile.demo());
    }

    @Test
    void nobody_is_named_in_an_edit() {
        String all = new ShowHistory(shop).ofJob("q-0001").toString();
        assertThat(all).doesNotContain("Harbour Town");
        assertThat(new ShowJob(shop).show("q-0001").owner())
                .hasValueSatisfying(owner -> assertThat(owner.name()).isEqualTo("Harbour Town Band"));
    }

    @Test
    void an_empty_shop_stays_empty_on_the_next_run() {
        Path other = folder.resolve("other");
        var where = new OpenShop.Where.Folder(other);
        OpenShop.open(where, OpenShop.FirstRun.EMPTY, Place.CLOCK).close();
        try (Shop again = OpenShop.open(where, OpenShop.FirstRun.DEMO, Place.CLOCK)) {
            assertThat(new Shelf(again).all()).isEmpty();
        }
    }

    private static boolean has(Keywork keywork, Reading reading) {
        return switch (reading.kind().subject()) {
            case CUP -> keywork.cups().contains(reading.of());
            case HOLE -> keywork.holes().contains(reading.of());
            case KEY -> keywork.keys().contains(reading.of());
            case LINK -> keywork.links().contains(reading.of());
            case PLACE -> keywork.places().contains(reading.of());
            case HORN -> true;
        };
    }

    private static long count(Job job, ReadingKind kind) {
        return job.readings().current().stream()
                .filter(reading -> reading.kind() == kind)
                .count();
    }
}
