package hornwright.desk.web.measure;

import hornwright.bench.job.ReadingTaken;
import hornwright.bench.regulation.Watch;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.desk.units.Readings;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.ElementId;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Likely;
import hornwright.desk.web.view.MeasureSheet;
import hornwright.desk.web.view.OnBench;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Lays out a sheet of the measuring grid: what was typed, when it was kept, and what the plan makes of it. */
public final class MeasureGrid {
    private final OnBench bench;
    private final MeasureSheet sheet;
    private final Map<String, Typing> typings;
    private final Map<String, Instant> kept = new HashMap<>();

    /** What a person has typed that is not kept: the text, and why not. */
    public record Typing(String text, String fault) {}

    /** @param typings by field name: what stands in the field instead of the reading that is kept */
    public MeasureGrid(OnBench bench, MeasureSheet sheet, Map<String, Typing> typings) {
        this.bench = bench;
        this.sheet = sheet;
        this.typings = typings;
        bench.history().edits().forEach(posted -> {
            if (posted.edit() instanceof ReadingTaken taken) {
                kept.put(taken.reading().id(), posted.at());
            }
        });
    }

    public List<MeasurePage.Row> rows() {
        List<MeasurePage.Row> rows = new ArrayList<>();
        boolean[] placed = {false};
        for (Subject subject : Subjects.of(bench, sheet)) {
            rows.add(row(subject, placed));
        }
        return rows;
    }

    public List<MeasurePage.Trouble> troubles() {
        return rows().stream()
                .flatMap(row -> row.cells().stream())
                .filter(cell -> !cell.fault().isEmpty())
                .map(cell -> new MeasurePage.Trouble(cell.id(), cell.label() + ": " + cell.fault()))
                .toList();
    }

    /** The same, and the leaf under linked cups, which has a page of its own. */
    public static List<MeasurePage.Tab> tabsWithLinks(OnBench bench, MeasureSheet current) {
        List<Watch> spots = Watch.all(bench.keywork());
        long felt = spots.stream()
                .filter(spot -> bench.job().readings().current().stream()
                        .anyMatch(reading -> reading.of().equals(spot.at())
                                && reading.point().equals(spot.point())))
                .count();
        return Stream.concat(
                        tabs(bench, current).stream(),
                        Stream.of(new MeasurePage.Tab(
                                "Linked cups",
                                bench.address("links"),
                                "%d of %d".formatted(felt, spots.size()),
                                false)))
                .toList();
    }

    /** The sheets in words: how many points of each are filled. */
    public static List<MeasurePage.Tab> tabs(OnBench bench, MeasureSheet current) {
        return Stream.of(MeasureSheet.values())
                .map(sheet -> {
                    MeasureGrid grid = new MeasureGrid(bench, sheet, Map.of());
                    long all = Subjects.of(bench, sheet).size()
                            * (long) sheet.columns().size();
                    return new MeasurePage.Tab(
                            sheet.title(),
                            bench.address("measure") + "?sheet=" + sheet.word(),
                            "%d of %d".formatted(grid.filled(), all),
                            sheet == current);
                })
                .toList();
    }

    private long filled() {
        return Subjects.of(bench, sheet).stream()
                .flatMap(subject -> sheet.columns().stream().map(column -> reading(subject.id(), column)))
                .filter(Optional::isPresent)
                .count();
    }

    private MeasurePage.Row row(Subject subject, boolean[] placed) {
        List<MeasurePage.Cell> cells = sheet.columns().stream()
                .map(column -> cell(subject, column, placed))
                .toList();
        return new MeasurePage.Row(
                ElementId.row(subject.id()),
                subject.name(),
                subject.shownAt() == null ? "" : bench.placeAddress(subject.shownAt()),
                cells,
                sheet.results().stream()
                        .map(name -> new MeasurePage.Outcome(
                                ElementId.row(subject.id()) + "-" + name.word(),
                                name.label(),
                                subject.number().apply(name).stream()
                                        .map(number -> Figure.of(bench.id(), name, number))
                                        .toList(),
                                ""))
                        .toList());
    }

    private MeasurePage.Cell cell(Subject subject, MeasureSheet.Column column, boolean[] placed) {
        String name = "r/%s/%s/%s".formatted(column.kind().name(), subject.id(), column.point());
        Optional<Reading> reading = reading(subject.id(), column);
        Typing typing = typings.get(name);
        String text =
                typing != null ? typing.text() : reading.map(MeasureGrid::typed).orElse("");
        boolean first = !placed[0] && (typing != null || text.isEmpty());
        placed[0] |= first;
        return new MeasurePage.Cell(
                ElementId.field(column.kind().name(), subject.id(), column.point()),
                name,
                subject.name() + ", " + column.heading().toLowerCase(java.util.Locale.ROOT),
                text,
                reading.map(this::said).orElse(""),
                typing == null ? reading.map(this::remark).orElse("") : "",
                typing == null ? "" : typing.fault(),
                first);
    }

    private Optional<Reading> reading(String of, MeasureSheet.Column column) {
        return bench.job().readings().current().stream()
                .filter(reading -> reading.kind() == column.kind()
                        && reading.of().equals(of)
                        && reading.point().equals(column.point()))
                .reduce((first, second) -> second);
    }

    private String said(Reading reading) {
        Instant at = kept.get(reading.id());
        return at == null ? "" : "saved " + Clocks.when(at, Instant.now());
    }

    /** What stands beside a value that was typed in another unit or lies far from the pattern. */
    private String remark(Reading reading) {
        String lapsed = bench.lapsed(reading.id());
        if (!lapsed.isEmpty()) {
            return lapsed;
        }
        return reading.observed() instanceof Observed.Amount amount
                ? Likely.remark(
                        amount.value(),
                        amount.unit().symbol(),
                        reading.raw(),
                        Subjects.expected(bench, reading.kind(), reading.of()))
                : "";
    }

    /** What the pattern leads one to expect at a point, to notice a slip by. */
    public static Optional<Double> expected(OnBench bench, ReadingKind kind, String of) {
        return Subjects.expected(bench, kind, of);
    }

    /** What stands in the field of a reading. */
    public static String typed(Reading reading) {
        if (!reading.raw().isEmpty()) {
            return reading.raw();
        }
        return Readings.typed(reading.observed());
    }
}
