package hornwright.desk.web.plan;

import hornwright.bench.job.ReadingTaken;
import hornwright.bench.plan.PlannedLink;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.regulation.LinksAnswer;
import hornwright.bench.plan.regulation.LinksAnswer.SpotLine;
import hornwright.bench.plan.regulation.SettledContact;
import hornwright.bench.plan.regulation.YieldAnswer;
import hornwright.bench.plan.settled.SettledAnswer;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.desk.paper.ContactWords;
import hornwright.desk.paper.RegulationSheet;
import hornwright.desk.paper.SheetHead;
import hornwright.desk.units.Shown;
import hornwright.desk.web.measure.MeasureGrid;
import hornwright.desk.web.measure.MeasurePage;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.ElementId;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.State;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Lays out regulation: every finger with what it closes, what was felt, what follows and what is to be done. */
public final class LinksRows {
    private final OnBench bench;
    private final LinksAnswer answer;
    private final List<SettledContact> settled;
    private final Map<String, MeasureGrid.Typing> troubles;
    private final LinkNames names;
    private final Map<String, Instant> kept = new HashMap<>();

    /** @param troubles by field name: what stands in the field instead of what is kept */
    public LinksRows(
            OnBench bench, LinksAnswer answer, List<SettledContact> settled, Map<String, MeasureGrid.Typing> troubles) {
        this.bench = bench;
        this.answer = answer;
        this.settled = List.copyOf(settled);
        this.troubles = troubles;
        this.names = new LinkNames(bench.keywork());
        bench.history().edits().forEach(posted -> {
            if (posted.edit() instanceof ReadingTaken taken) {
                kept.put(taken.reading().id(), posted.at());
            }
        });
    }

    /** What a contact comes to when its proposal is accepted, to the hundredth a gauge shows. */
    public static Optional<Decision.Contact> decided(PlannedLink line) {
        PlannedNumber change = line.change();
        double hundredths = change == null ? 0 : Math.round(100 * change.value()) / 100.0;
        return hundredths == 0
                ? Optional.empty()
                : Optional.of(new Decision.Contact(line.link(), hundredths, "by the leaf under the linked cups"));
    }

    public LinksPage page(Frame frame, YieldAnswer assembly, SettledAnswer settled, String unit, String fresh) {
        List<LinksPage.SetRow> sets = sets();
        return new LinksPage(
                frame,
                Next.of(bench),
                bench.id(),
                bench.history().seq(),
                fresh,
                unit,
                sets,
                todo(false, fresh),
                assembly(assembly),
                new PackedRows(bench, names, settled).rows(),
                sets.stream()
                        .flatMap(set -> set.spots().stream())
                        .map(LinksPage.SpotRow::cell)
                        .filter(cell -> !cell.fault().isEmpty())
                        .map(cell -> new MeasurePage.Trouble(cell.id(), cell.label() + ": " + cell.fault()))
                        .toList());
    }

    /** @param sent names of the fields that were sent */
    public LinksPage.LivePart live(Set<String> sent, boolean ahead, String fresh) {
        List<LinksPage.SetRow> sets = sets();
        return new LinksPage.LivePart(
                bench.history().seq(),
                ahead,
                Next.of(bench),
                sets,
                sets.stream()
                        .flatMap(set -> set.spots().stream())
                        .map(LinksPage.SpotRow::cell)
                        .filter(cell -> sent.contains(cell.name()))
                        .toList(),
                todo(ahead, fresh));
    }

    /** The same for the wall. */
    public RegulationSheet sheet(SheetHead head, SettledAnswer settled) {
        LinkSets drawn = new LinkSets(bench.keywork(), answer);
        return new RegulationSheet(
                head.title(),
                head.line(),
                sum(),
                new PackedRows(bench, names, settled).sum(),
                drawn.presses().stream()
                        .map(press ->
                                hornwright.desk.paper.Figure.of(drawn.of(press).print()))
                        .toList(),
                answer.contacts().stream().map(this::onPaper).toList());
    }

    private RegulationSheet.Line onPaper(PlannedLink line) {
        PlannedNumber change = line.change();
        PlannedNumber error = line.error();
        String last = settled.stream()
                .filter(contact -> contact.link().id().equals(line.link()))
                .map(SettledContact::words)
                .findFirst()
                .orElse("");
        return new RegulationSheet.Line(
                OnBench.capital(names.contact(line.link())),
                error == null ? "" : Shown.signed(error.value(), error.u()),
                change == null ? (error == null ? "feel first" : "leave") : ContactWords.onPaper(line),
                last,
                names.after(line.link()));
    }

    private List<LinksPage.SetRow> sets() {
        LinkSets drawn = new LinkSets(bench.keywork(), answer);
        return drawn.presses().stream()
                .map(press -> new LinksPage.SetRow(
                        "set-" + press,
                        "With " + names.key(press) + " pressed lightly",
                        drawn.of(press).screen("set-" + press + "-"),
                        answer.spots().stream()
                                .filter(spot -> spot.watch().press().equals(press))
                                .map(this::spot)
                                .toList()))
                .toList();
    }

    private LinksPage.SpotRow spot(SpotLine spot) {
        String at = spot.watch().at();
        boolean cup = bench.keywork().cups().contains(at);
        ReadingKind kind = cup ? ReadingKind.LINKED_GAP : ReadingKind.CONTACT_GAP;
        String name =
                cup ? "under " + names.cup(at) + names.held(spot.watch()) : "in the contact of " + names.contact(at);
        MeasurePage.Cell cell = cell(
                kind, at, spot.watch().point(), name, names.key(spot.watch().press()));
        return new LinksPage.SpotRow(
                cell,
                name,
                "then-" + cell.id(),
                state(spot),
                spot.expected() == null ? List.of() : List.of(Figure.signed(bench.id(), "once done", spot.expected())));
    }

    private static State state(SpotLine spot) {
        if (spot.closes() == null) {
            return State.NOT_MEASURED;
        }
        return spot.closes() ? new State("done", "shut") : new State("stale", "open");
    }

    private MeasurePage.Cell cell(ReadingKind kind, String of, String point, String name, String press) {
        String field = "r/%s/%s/%s".formatted(kind.name(), of, point);
        Optional<Reading> reading = bench.job().readings().current().stream()
                .filter(one ->
                        one.kind() == kind && one.of().equals(of) && one.point().equals(point))
                .reduce((first, second) -> second);
        boolean stale = reading.stream()
                .anyMatch(one -> bench.plan().stale().stream()
                        .anyMatch(old -> old.reading().equals(one.id())));
        MeasureGrid.Typing typing = troubles.get(field);
        return new MeasurePage.Cell(
                ElementId.field(kind.name(), of, point),
                field,
                OnBench.capital(name) + " with " + press + " pressed",
                typing != null ? typing.text() : reading.map(MeasureGrid::typed).orElse(""),
                reading.map(one -> said(one, stale)).orElse(""),
                "",
                typing == null ? "" : typing.fault(),
                false);
    }

    private String said(Reading reading, boolean stale) {
        Instant at = kept.get(reading.id());
        String when = at == null ? "" : "saved " + Clocks.when(at, Instant.now());
        return stale ? when + "; no longer counts, feel again" : when;
    }

    private LinksPage.Todo todo(boolean ahead, String fresh) {
        return new LinksPage.Todo(
                bench.id(),
                bench.history().seq(),
                fresh + "-todo",
                sum(),
                answer.toDo().stream().map(this::line).toList(),
                new SettledRows(bench, settled).rows(fresh),
                ahead);
    }

    private String sum() {
        long read = answer.read();
        if (read == 0) {
            return "Nobody has felt yet. Begin with D: a leaf under D, under F♯ and under bis.";
        }
        double worst = answer.spots().stream()
                .map(SpotLine::expected)
                .flatMap(Stream::ofNullable)
                .mapToDouble(PlannedNumber::value)
                .max()
                .orElse(0);
        int todo = answer.toDo().size();
        String what = todo == 0
                ? "nothing to alter"
                : todo == 1 ? "one contact to alter" : todo + " contacts to alter, all in one round";
        return String.format(
                Locale.ROOT,
                "Felt at %d of %d spots: %s%s.",
                read,
                answer.spots().size(),
                what,
                todo == 0
                        ? ""
                        : worst <= 0
                                ? "; then every cup felt should shut"
                                : "; the largest gap then is about %.2f mm".formatted(worst));
    }

    private LinksPage.Line line(PlannedLink line) {
        return new LinksPage.Line(
                OnBench.capital(names.contact(line.link())),
                bench.keywork().places().contains(line.link()) ? bench.placeAddress(line.link()) : "",
                ContactWords.work(line),
                figures(line),
                line.told() ? "" : "another contact of the same touch would do as well",
                names.after(line.link()));
    }

    /** Turns of the screw or pulls of the strip with how much they come to, none of them with a sign. */
    private List<Figure> figures(PlannedLink line) {
        List<Figure> figures = new ArrayList<>();
        PlannedNumber turns = line.turns();
        if (turns != null) {
            figures.add(Figure.of(bench.id(), "turns of the screw", unsigned(turns)));
        }
        PlannedNumber change = line.change();
        if (change != null) {
            figures.add(Figure.of(bench.id(), change.value() < 0 ? "take" : "add", unsigned(change)));
        }
        if (line.pulls() != null) {
            figures.add(Figure.of(bench.id(), "pulls", line.pulls()));
        }
        return figures;
    }

    private static PlannedNumber unsigned(PlannedNumber number) {
        return new PlannedNumber(
                Math.abs(number.value()), number.unit(), number.u(), number.because(), null, null, null);
    }

    private LinksPage.FirstAssembly assembly(YieldAnswer yield) {
        return new LinksPage.FirstAssembly(
                Figure.of(bench.id(), "first assemblies in which all shut", yield.allClosed()),
                Figure.of(bench.id(), "largest gap of 95 in 100", yield.largestGap()),
                yield.worstCup() == null ? "" : names.cup(yield.worstCup()),
                yield.mostWorth().stream()
                        .map(worth -> new LinksPage.Worth(
                                OnBench.capital(names.contact(worth.link())),
                                Figure.of(bench.id(), "all shut then", worth.allClosed()),
                                Figure.of(bench.id(), "mean of the largest gaps then", worth.meanGap())))
                        .toList());
    }
}
