package hornwright.desk.paper;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.job.Job;
import hornwright.bench.plan.Plan;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.Unit;
import hornwright.bench.survey.WorkKind;
import hornwright.desk.journal.Hand;
import hornwright.desk.use.Decide;
import hornwright.desk.use.Form;
import hornwright.desk.use.Keyworks;
import hornwright.desk.use.OpenShop;
import hornwright.desk.use.ProposePlan;
import hornwright.desk.use.ReachStage;
import hornwright.desk.use.RecordReading;
import hornwright.desk.use.RecordWork;
import hornwright.desk.use.Saved;
import hornwright.desk.use.Shop;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** What the owner of the demo alto takes home. */
@Tag("slow")
final class HandOverTest {
    private static final Hand HAND = new Hand("p-1", "bench one");
    private static final String HORN = "q-0001";
    private static final LocalDate RECHECK = LocalDate.of(2026, 12, 25);

    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    @SuppressWarnings("NullAway.Init")
    private Shop shop;

    @BeforeEach
    void open() {
        shop = OpenShop.open(new OpenShop.Where.Folder(folder), OpenShop.FirstRun.DEMO, Clock.systemUTC());
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private Form form() {
        return Form.once(shop.job(HORN).seq(), HAND);
    }

    private HandOver sheet() {
        Job job = shop.jobNow(HORN);
        Plan plan = new ProposePlan(shop).of(job);
        return HandOverWords.of(
                Keyworks.of(job), job, plan, new SheetHead("Tarrant & Loe alto 41207", "Quayside Winds"), RECHECK);
    }

    private String said(String heading) {
        return sheet().sections().stream()
                .filter(section -> section.heading().equals(heading))
                .flatMap(section -> section.items().stream())
                .map(item -> item.name() + ": " + item.words())
                .collect(java.util.stream.Collectors.joining("\n"));
    }

    @Test
    void a_pad_is_told_as_new_once_every_step_of_its_cup_is_signed_off_and_as_planned_until_then() {
        String before = said("What is new");
        assertThat(said("Planned, not done yet")).isNotEmpty();
        assertThat(sheet().opening()).contains("planned and not done yet");
        Job job = shop.jobNow(HORN);
        new ProposePlan(shop)
                .of(job).order().stream()
                        .filter(step -> step.step().of().equals("cup.f"))
                        .forEach(step -> new RecordWork(shop)
                                .record(
                                        HORN,
                                        form(),
                                        WorkKind.SIGNED_OFF,
                                        step.step().id()));
        String after = said("What is new");
        assertThat(after).isNotEqualTo(before).contains("F pad");
        assertThat(said("Planned, not done yet")).isNotEmpty();
    }

    private List<String> lasting() {
        return sheet().sections().stream()
                .filter(section -> section.heading().equals("What cannot be undone"))
                .flatMap(section -> section.items().stream())
                .map(OwnerReport.Item::words)
                .toList();
    }

    @Test
    void a_height_is_compared_only_once_it_was_measured_again() {
        assertThat(sheet().compared()).isEmpty();
        new ReachStage(shop).reach(HORN, form(), Stage.RESTED);
        new RecordReading(shop)
                .record(
                        HORN,
                        form(),
                        RecordReading.Typed.of(
                                ReadingKind.FRONT_HEIGHT,
                                "cup.d",
                                "front edge of the hole, away from the hinge",
                                new Observed.Amount(8.05, Unit.MILLIMETRE, null),
                                "8.05"));
        assertThat(sheet().compared())
                .singleElement()
                .satisfies(row -> assertThat(row.what()).startsWith("D, height"))
                .satisfies(row -> assertThat(row.before()).startsWith("8.2 ±"))
                .satisfies(row -> assertThat(row.after()).startsWith("8.0").endsWith("mm"));
    }

    @Test
    void what_was_done_for_good_is_named_and_nothing_else_is() {
        assertThat(lasting()).isEmpty();
        new RecordWork(shop).record(HORN, form(), WorkKind.HOLE_LEVELLED, "low-c");
        new RecordWork(shop).record(HORN, form(), WorkKind.ARM_BENT, "cup.d");
        assertThat(lasting()).containsExactly("low C.");
    }

    @Test
    void the_sheet_is_an_archival_and_accessible_file_on_both_papers_and_says_when_to_come_back() throws Exception {
        for (PaperSize size : PaperSize.values()) {
            byte[] pdf = sheet().pdf(size);
            assertThat(Validator.complaints(pdf, PDFAFlavour.PDFA_2_A)).isEmpty();
            assertThat(Validator.complaints(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
            try (var document = Loader.loadPDF(pdf)) {
                assertThat(new PDFTextStripper().getText(document).replaceAll("\\s+", " "))
                        .contains("looked at again on 25 December 2026", "What cannot be undone", "left imperfect");
            }
        }
    }

    @Test
    void handing_over_changes_no_number_of_the_plan_and_can_be_taken_back() {
        Plan before = new ProposePlan(shop).of(shop.jobNow(HORN));
        Saved saved = new Decide(shop)
                .decide(
                        HORN,
                        form(),
                        new Decision.HandedOver(
                                shop.job(HORN).seq(), "0".repeat(64), RECHECK.toString(), "handed over"));
        assertThat(new ProposePlan(shop).of(shop.jobNow(HORN))).isEqualTo(before);
        assertThat(shop.jobNow(HORN).decisions()).containsKey("hand-over");
        long seq = ((Saved.Kept) saved).seq();
        assertThat(new hornwright.desk.use.Undo(shop).undoOfJob(HORN, form(), seq))
                .isInstanceOf(Saved.Kept.class);
        assertThat(shop.job(HORN).state().orElseThrow().decisions()).doesNotContainKey("hand-over");
    }
}
