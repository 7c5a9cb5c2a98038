package hornwright.desk.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.archive.Course;
import hornwright.bench.archive.Family;
import hornwright.bench.archive.SerialRange;
import hornwright.bench.archive.YearAnswer;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Voice;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.Planner;
import hornwright.bench.seal.LeakSites;
import hornwright.desk.archivefile.ArchiveFile;
import hornwright.desk.jobfile.JobFile;
import hornwright.desk.jobfile.JobRequest;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The papers of a horn that was measured for an hour, and of horns nobody has measured. */
@Tag("slow")
final class BenchPaperTest {
    private static final SheetHead HEAD = new SheetHead("Tarrant & Loe alto", "Serial 41207 · Quayside Winds");
    private static final JobRequest JOB = JobFile.read(example());
    private static final Plan PLAN = Planner.plan(JOB.inputs());

    private static String example() {
        try (InputStream in = BenchPaperTest.class.getResourceAsStream("/hornwright/examples/job.json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Stream<Keywork> unmeasured() {
        return KeyworkFile.SHIPPED.stream()
                .map(name -> KeyworkFile.shipped(name).orElseThrow());
    }

    private static Keywork keywork() {
        return JOB.inputs().keywork();
    }

    private static byte[] pdf(BenchPaper paper, PaperSize size) {
        return paper.of(keywork(), PLAN, HEAD, size);
    }

    private static String text(byte[] pdf) throws Exception {
        try (var document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @ParameterizedTest
    @EnumSource
    void every_paper_is_an_archival_file_on_letter_and_a4(BenchPaper paper) throws Exception {
        for (PaperSize size : PaperSize.values()) {
            byte[] pdf = pdf(paper, size);
            if (paper == BenchPaper.REPORT) {
                assertThat(Validator.complaints(pdf, PDFAFlavour.PDFA_2_A)).isEmpty();
                assertThat(Validator.complaints(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
            } else {
                assertThat(Validator.complaints(pdf, PDFAFlavour.PDFA_2_B)).isEmpty();
            }
        }
    }

    @Test
    void the_as_built_sheet_is_an_archival_file_that_names_its_gaps_and_its_grades() throws Exception {
        Map<String, AsBuiltAt> built = archive()
                .asBuilt(
                        Voice.ALTO,
                        41207,
                        keywork().places().where(place -> true).stream()
                                .map(Place::id)
                                .toList());
        SerialRange shown = new SerialRange(38_000, 61_000);
        Map<String, Course> courses = archive().courses(Voice.ALTO, shown, built.keySet()).stream()
                .collect(Collectors.toMap(Course::place, course -> course));
        AsBuiltSheet sheet = new AsBuiltWords(keywork(), built, 41207, shown)
                .sheet(HEAD, Family.of(keywork().places(), built, courses), 14, new YearAnswer.Untold());
        for (PaperSize size : PaperSize.values()) {
            assertThat(Validator.complaints(sheet.pdf(size), PDFAFlavour.PDFA_2_B))
                    .isEmpty();
        }
        assertThat(text(sheet.pdf(PaperSize.A4)))
                .contains("41207", "natural cork", "well supported", "contested", "Gaps, nobody has looked")
                .contains("at least");
    }

    private static Archive archive() {
        return ArchiveFile.demo();
    }

    @Test
    void the_pad_map_names_every_cup_with_its_diameter() throws Exception {
        String text = text(pdf(BenchPaper.BENCH_SHEET, PaperSize.A4));
        List<String> lines = text.lines().map(String::strip).toList();
        for (Cup cup : keywork().cups()) {
            String name = keywork().nameOf(cup).display();
            assertThat(lines).as(name).anyMatch(line -> line.equals(name) || line.equals(name + " *"));
        }
        assertThat(text).contains("thick", "resonator", "Height card", "Order of regulation");
    }

    @Test
    void each_part_of_the_bench_sheet_fits_one_page() throws Exception {
        for (PaperSize size : PaperSize.values()) {
            try (var document = Loader.loadPDF(pdf(BenchPaper.BENCH_SHEET, size))) {
                assertThat(document.getNumberOfPages()).as(size.name()).isEqualTo(3);
            }
        }
    }

    @Test
    void the_mat_shows_every_planned_pad_at_true_size() throws Exception {
        List<Double> circles = DrawnCircles.diametersMm(pdf(BenchPaper.LAYOUT_MAT, PaperSize.LETTER));
        for (Cup cup : keywork().cups()) {
            double planned = PLAN.number("pad." + cup.hole(), NumberName.DIAMETER)
                    .orElseThrow()
                    .value();
            assertThat(circles)
                    .as(cup.id())
                    .anySatisfy(drawn -> assertThat(drawn).isCloseTo(planned, within(0.1)));
        }
    }

    @Test
    void the_wall_prints_name_every_rod_and_every_leak_site() throws Exception {
        String text = text(pdf(BenchPaper.WALL_PRINTS, PaperSize.A4)).replaceAll("\\s+", " ");
        LeakSites.of(keywork()).forEach(site -> assertThat(text).contains(site.name()));
        RodNames rods = new RodNames(keywork());
        keywork().rods().forEach(rod -> assertThat(text).contains(rods.of(rod.id())));
    }

    @Test
    void the_report_tells_what_stays_what_goes_what_is_lost_and_what_stays_imperfect() throws Exception {
        String text = text(pdf(BenchPaper.REPORT, PaperSize.A4));
        assertThat(text)
                .contains(
                        "What stays",
                        "What is replaced, and why",
                        "What cannot be undone",
                        "What is left imperfect",
                        "What it may take")
                .doesNotContain("goes with", "null")
                .doesNotContainPattern("(pad|foot|link|cup|spring)\\.[a-z]");
    }

    @ParameterizedTest
    @MethodSource("unmeasured")
    void a_horn_nobody_has_measured_prints_too(Keywork keywork) {
        Plan plan = Planner.plan(PlanInputs.of(keywork));
        for (BenchPaper paper : BenchPaper.values()) {
            assertThat(paper.of(keywork, plan, HEAD, PaperSize.A4))
                    .as(paper.fileName())
                    .isNotEmpty();
        }
    }

    @Test
    void a_mat_without_any_known_size_says_so_instead_of_coming_out_blank() throws Exception {
        Keywork tenor = KeyworkFile.shipped("tarrant-loe-tenor").orElseThrow();
        byte[] pdf = BenchPaper.LAYOUT_MAT.of(tenor, Planner.plan(PlanInputs.of(tenor)), HEAD, PaperSize.A4);
        assertThat(text(pdf)).contains("until the cup is measured", "100 mm");
        assertThat(DrawnCircles.diametersMm(pdf)).isEmpty();
    }
}
