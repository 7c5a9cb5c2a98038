package hornwright.desk.web.sheets;

import hornwright.bench.body.Pictured;
import hornwright.bench.care.Hazard;
import hornwright.bench.job.ReadingTaken;
import hornwright.bench.sheet.Remedy;
import hornwright.bench.sheet.SheetAnswer;
import hornwright.bench.sheet.SheetLine;
import hornwright.bench.sheet.Verdict;
import hornwright.bench.survey.Reading;
import hornwright.desk.web.measure.MeasureGrid;
import hornwright.desk.web.measure.MeasurePage;
import hornwright.desk.web.photo.PhotosOf;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.ElementId;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.State;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Lays out a bench sheet: what was typed, when it was kept, and what follows line by line. */
public final class SheetRows {
    private final OnBench bench;
    private final BenchSheet sheet;
    private final SheetAnswer answer;
    private final Map<String, SheetLine> lines;
    private final Map<String, MeasureGrid.Typing> troubles;
    private final Map<String, Instant> kept = new HashMap<>();

    /** @param troubles by field name: what stands in the field instead of what is kept */
    public SheetRows(OnBench bench, BenchSheet sheet, SheetAnswer answer, Map<String, MeasureGrid.Typing> troubles) {
        this.bench = bench;
        this.sheet = sheet;
        this.answer = answer;
        this.lines = answer.byId();
        this.troubles = troubles;
        bench.history().edits().forEach(posted -> {
            if (posted.edit() instanceof ReadingTaken taken) {
                kept.put(taken.reading().id(), posted.at());
            }
        });
    }

    public SheetPage page(Frame frame, String unit, String fresh) {
        List<SheetPage.Section> sections = sections();
        return new SheetPage(
                frame,
                Next.of(bench),
                bench.id(),
                bench.history().seq(),
                sheet.word(),
                sheet.title(),
                sheet.lead(),
                unit,
                summary(),
                sections,
                answer.order(),
                sheet.notes(),
                troubles(sections),
                fresh);
    }

    /** What has changed since that other state of the same sheet, and the fields that were sent. */
    public SheetLive since(SheetRows was, Set<String> sent, boolean ahead) {
        Map<String, SheetPage.Answer> before = new HashMap<>();
        was.all().forEach(line -> before.put(line.id(), line.answer()));
        List<MeasurePage.Cell> cells = new ArrayList<>();
        List<SheetPage.Answer> answers = new ArrayList<>();
        for (SheetPage.Line line : all()) {
            for (SheetPage.Field field : both(line)) {
                if (sent.contains(field.cell().name())) {
                    cells.add(field.cell());
                }
            }
            if (!line.answer().equals(before.get(line.id()))) {
                answers.add(line.answer());
            }
        }
        return new SheetLive(bench.history().seq(), ahead, Next.of(bench), summary(), cells, answers, answer.order());
    }

    /** With how many values stand here that were read too early to count. */
    private String summary() {
        long lapsed = all().stream()
                .flatMap(line -> both(line).stream())
                .filter(field -> field.cell().remark().startsWith("counts no longer"))
                .count();
        return lapsed == 0
                ? answer.summary()
                : "%s %d %s before and %s no longer."
                        .formatted(
                                answer.summary(),
                                lapsed,
                                lapsed == 1 ? "was read" : "were read",
                                lapsed == 1 ? "counts" : "count");
    }

    private List<SheetPage.Line> all() {
        return sections().stream().flatMap(section -> section.lines().stream()).toList();
    }

    private static List<SheetPage.Field> both(SheetPage.Line line) {
        List<SheetPage.Field> fields = new ArrayList<>(line.fields());
        fields.addAll(line.more());
        return fields;
    }

    private List<SheetPage.Section> sections() {
        return new SheetLayout(bench)
                .of(sheet).stream()
                        .map(section -> new SheetPage.Section(
                                section.title(),
                                section.how(),
                                section.lines().stream().map(this::line).toList()))
                        .toList();
    }

    private SheetPage.Line line(SheetLayout.Line line) {
        SheetLine said = lines.getOrDefault(line.id(), SheetLine.untried(line.id()));
        List<SheetPage.Field> more =
                line.more().stream().map(f -> field(line, f)).toList();
        boolean needed = said.verdict() == Verdict.ACT || said.verdict() == Verdict.STOP;
        boolean typed = more.stream().anyMatch(field -> !field.cell().typed().isEmpty());
        return new SheetPage.Line(
                ElementId.row(line.id()),
                line.name(),
                line.address(),
                line.fields().stream().map(f -> field(line, f)).toList(),
                more,
                needed || typed,
                answer(line, said),
                Pictured.isOfTheFinish(line.id()) ? PhotosOf.of(bench, line.id()) : null);
    }

    private SheetPage.Field field(SheetLayout.Line line, SheetLayout.Field field) {
        Optional<Reading> reading = bench.job().readings().current().stream()
                .filter(one -> one.kind() == field.kind()
                        && one.of().equals(field.of())
                        && one.point().equals(field.point()))
                .reduce((first, second) -> second);
        MeasureGrid.Typing typing = troubles.get(field.name());
        String text =
                typing != null ? typing.text() : reading.map(MeasureGrid::typed).orElse("");
        MeasurePage.Cell cell = new MeasurePage.Cell(
                ElementId.field(field.kind().name(), field.of(), field.point()),
                field.name(),
                line.name() + ", " + field.label().toLowerCase(java.util.Locale.ROOT),
                text,
                reading.map(this::said).orElse(""),
                typing == null ? reading.map(one -> bench.lapsed(one.id())).orElse("") : "",
                typing == null ? "" : typing.fault(),
                false);
        return new SheetPage.Field(
                cell,
                field.label(),
                field.options().stream()
                        .map(word -> new PlacePanel.Option(word, word, word.equals(text)))
                        .toList());
    }

    private String said(Reading reading) {
        Instant at = kept.get(reading.id());
        return at == null ? "" : "saved " + Clocks.when(at, Instant.now());
    }

    private SheetPage.Answer answer(SheetLayout.Line line, SheetLine said) {
        return answer(bench, line.id(), said);
    }

    static SheetPage.Answer answer(OnBench bench, String id, SheetLine said) {
        return new SheetPage.Answer(
                "ans-" + ElementId.row(id),
                state(said.verdict()),
                OnBench.capital(said.says()),
                said.numbers().stream()
                        .map(told -> Figure.of(bench.id(), told.label(), told.number()))
                        .toList(),
                said.remedies().stream().map(SheetRows::way).toList());
    }

    static State state(Verdict verdict) {
        return new State(
                switch (verdict) {
                    case UNTRIED -> "missing";
                    case GOOD -> "done";
                    case MAY_STAY -> "planned";
                    case ACT -> "stale";
                    case STOP -> "contested";
                },
                verdict.word());
    }

    private static SheetPage.Way way(Remedy remedy) {
        return new SheetPage.Way(
                remedy.what(),
                remedy.limit(),
                remedy.toMin() == 0 ? "" : "%d to %d min".formatted(remedy.fromMin(), remedy.toMin()),
                switch (remedy.undo()) {
                    case YES -> "can be undone";
                    case PARTLY -> "can be undone in part";
                    case NO -> "cannot be undone";
                },
                remedy.cautions().stream().map(Hazard::inOneLine).toList());
    }

    private static List<MeasurePage.Trouble> troubles(List<SheetPage.Section> sections) {
        return sections.stream()
                .flatMap(section -> section.lines().stream())
                .flatMap(line -> both(line).stream())
                .map(SheetPage.Field::cell)
                .filter(cell -> !cell.fault().isEmpty())
                .map(cell -> new MeasurePage.Trouble(cell.id(), cell.label() + ": " + cell.fault()))
                .toList();
    }
}
