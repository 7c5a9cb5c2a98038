package hornwright.desk.web.arrival;

import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Shot;
import hornwright.bench.survey.Stage;
import hornwright.desk.web.measure.Subjects;
import hornwright.desk.web.view.MeasureSheet;
import hornwright.desk.web.view.Miniature;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PadSizes;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.State;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Writes how far an arrival has come: the ten minutes, the baseline, the photographs. */
public final class ArrivalRows {
    /** So many open cups are measured before strip-down (bench judgement). */
    private static final int OPEN_CUPS = 10;
    /** So many old thicknesses tell the rest (bench judgement). */
    private static final int THICKNESSES = 5;

    private final OnBench bench;

    public ArrivalRows(OnBench bench) {
        this.bench = bench;
    }

    /** The four parts of the first ten minutes, with what each pays at once. */
    public List<ArrivalPage.Part> path() {
        int cups = bench.keywork().cups().size();
        long inside = of(ReadingKind.CUP_INSIDE);
        long heights = of(ReadingKind.FRONT_HEIGHT);
        long old = of(ReadingKind.THICKNESS)
                + bench.job().findings().places().stream()
                        .filter(finding -> finding.thicknessMm() != null)
                        .count()
                + bench.job().findings().groups().stream()
                        .filter(finding -> finding.thicknessMm() != null)
                        .count();
        int strokes = bench.job().findings().groups().size()
                + bench.job().findings().places().size();
        boolean agreed = bench.job().agreedUse().isPresent();
        return List.of(
                part(
                        agreed && bench.job().identity().serial() != null,
                        "Which horn, and what for",
                        (bench.job().identity().serial() == null ? "no serial" : "serial noted")
                                + (agreed ? ", use agreed" : ", use not agreed"),
                        "1 min: places, order of removal, photograph list, what the factory fitted, a range of hours",
                        "arrival#who"),
                part(
                        inside >= 2L * cups,
                        "Cup diameters, two ways",
                        "%d of %d".formatted(inside, 2 * cups),
                        "4 to 5 min: the pad order, the layout mat, what the shelf lacks, the cost",
                        "measure?sheet=cups"),
                part(
                        heights >= Math.min(OPEN_CUPS, cups),
                        "Front heights of ten open cups",
                        "%d of %d".formatted(Math.min(heights, OPEN_CUPS), Math.min(OPEN_CUPS, cups)),
                        "2 min, before strip-down: a baseline, odd steps, the heights to come back to",
                        "measure?sheet=heights"),
                part(
                        strokes > 0 && old >= THICKNESSES,
                        "Materials by groups, five thicknesses",
                        "%d looked at, %d thick".formatted(strokes, Math.min(old, THICKNESSES)),
                        "2 min: what stays and what is replaced, the cork and felt to cut",
                        "survey"));
    }

    /** What is gone once the keys are off. */
    public List<ArrivalPage.Part> baseline() {
        return List.of(
                before(ReadingKind.FRONT_HEIGHT, "Heights", MeasureSheet.HEIGHTS),
                before(ReadingKind.TOUCH_WEIGHT, "Touch weights", MeasureSheet.TOUCHES),
                before(ReadingKind.PLAY, "Play of the keys", MeasureSheet.PLAY),
                before(ReadingKind.LEAK, "Total leak", MeasureSheet.LEAK));
    }

    private ArrivalPage.Part before(ReadingKind kind, String title, MeasureSheet sheet) {
        long taken = bench.job().readings().at(Stage.ARRIVAL).stream()
                .filter(reading -> reading.kind() == kind)
                .count();
        int points = Subjects.of(bench, sheet).size() * sheet.columns().size();
        boolean gone = bench.job().stage() != Stage.ARRIVAL;
        State state = taken >= points ? State.DONE : gone && taken == 0 ? new State("missing", "gone") : open(taken);
        return new ArrivalPage.Part(
                state, title, "%d of %d".formatted(taken, points), "", bench.address("measure?sheet=" + sheet.word()));
    }

    private static State open(long taken) {
        return taken == 0 ? State.NOT_MEASURED : new State("planned", "begun");
    }

    private ArrivalPage.Part part(boolean done, String title, String fact, String pays, String page) {
        return new ArrivalPage.Part(
                done ? State.DONE : new State("planned", "to do"), title, fact, pays, bench.address(page));
    }

    private long of(ReadingKind kind) {
        return bench.job().readings().current().stream()
                .map(Reading::kind)
                .filter(one -> one == kind)
                .count();
    }

    public ArrivalPage.Shots shots(String fresh, String said) {
        List<ArrivalPage.Shots.Group> groups = new ArrayList<>();
        for (Shot.Group group : Shot.Group.values()) {
            groups.add(new ArrivalPage.Shots.Group(
                    group.title(),
                    group.shots().stream()
                            .map(shot -> new ArrivalPage.Shots.Line(
                                    shot.id(),
                                    OnBench.capital(shot.words()),
                                    bench.job().isTaken(shot)))
                            .toList()));
        }
        return new ArrivalPage.Shots(bench.id(), bench.history().seq(), fresh, bench.shotsTaken(), said, groups);
    }

    /** "3 of 30 taken". */
    public List<PlacePanel.Option> uses() {
        return Stream.of(AgreedUse.values())
                .map(use -> new PlacePanel.Option(
                        use.name(),
                        use.word(),
                        bench.job().agreedUse().filter(agreed -> agreed == use).isPresent()))
                .toList();
    }

    public Miniature figure() {
        return Miniature.of(bench.keywork(), cup -> PadSizes.size(bench, cup));
    }
}
