package hornwright.desk.web.sheets;

import hornwright.bench.body.BodySheet;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Position;
import hornwright.bench.horn.TubePart;
import hornwright.bench.horn.Word;
import hornwright.bench.sheet.SheetAnswer;
import hornwright.bench.sheet.SheetAsked;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PinAccess;
import hornwright.bench.survey.PinChoice;
import hornwright.bench.survey.PinSort;
import hornwright.bench.survey.Reading;
import hornwright.desk.drawing.Spot;
import hornwright.desk.drawing.UnrolledHorn;
import hornwright.desk.web.photo.PhotosOf;
import hornwright.desk.web.view.ElementId;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The pins of a horn: on its drawing, and in words. */
public final class BodyRows {
    private final OnBench bench;
    private final SheetAnswer answer;
    private final List<Reading> pins;

    public BodyRows(OnBench bench, SheetAsked asked) {
        this.bench = bench;
        this.answer = BodySheet.of(asked);
        this.pins = BodySheet.pins(asked);
    }

    /** @param tin the drawing without pins */
    public BodyPage page(Frame frame, UnrolledHorn horn, String tin, String fresh, String fault) {
        List<BodyPage.Pin> rows = new ArrayList<>();
        StringBuilder marks = new StringBuilder("<g class=\"pins\">");
        for (Reading reading : pins) {
            Observed.Pin pin = (Observed.Pin) reading.observed();
            int number = rows.size() + 1;
            rows.add(row(number, reading, pin));
            marks.append(mark(number, horn.sheet().spot(pin.atMm(), pin.angleDeg()), pin.sort()));
        }
        return new BodyPage(
                frame,
                Next.of(bench),
                bench.id(),
                bench.history().seq(),
                fresh,
                tin.replaceFirst("</svg>\\s*$", marks.append("</g></svg>").toString()),
                answer.summary(),
                rows,
                options(PinSort.values(), null),
                near(bench.keywork()),
                options(PinAccess.values(), PinAccess.OUTSIDE),
                options(PinChoice.values(), PinChoice.LOOK),
                fault);
    }

    /** The spot a name stands for. */
    public static Optional<Position> spot(Keywork keywork, String name) {
        return keywork.holes()
                .find(name)
                .map(hole -> hole.at())
                .or(() -> keywork.tube().parts().stream()
                        .filter(part -> part.part().word().equals(name))
                        .findFirst()
                        .map(part -> new Position((part.fromMm() + part.toMm()) / 2, 0)));
    }

    private static List<PlacePanel.Option> near(Keywork keywork) {
        List<PlacePanel.Option> spots = new ArrayList<>();
        for (TubePart part : keywork.tube().parts()) {
            spots.add(new PlacePanel.Option(
                    part.part().word(), "middle of the " + part.part().word(), false));
        }
        for (Cup cup : keywork.cups()) {
            spots.add(new PlacePanel.Option(
                    cup.hole(), "the " + keywork.nameOf(cup).display() + " hole", false));
        }
        return spots;
    }

    private BodyPage.Pin row(int number, Reading reading, Observed.Pin pin) {
        String clock = pin.clock() == null ? "" : ", at %s o'clock".formatted(Written.plain(pin.clock()));
        String where = "%s, %.0f mm from the small end, %s%s"
                .formatted(
                        OnBench.capital(
                                bench.keywork().tube().partAt(pin.atMm()).word()),
                        pin.atMm(),
                        side(pin.angleDeg()),
                        clock);
        return new BodyPage.Pin(
                number,
                ElementId.row(reading.of()),
                reading.id(),
                "%s, %s mm, %s"
                        .formatted(
                                OnBench.capital(pin.sort().word()),
                                Written.plain(pin.sizeMm()),
                                pin.access().word()),
                where,
                options(PinChoice.values(), pin.choice()),
                SheetRows.answer(bench, reading.of(), answer.line(reading.of()).orElseThrow()),
                PhotosOf.of(bench, reading.of()));
    }

    private static String side(double angle) {
        if (Math.abs(angle) < 15) {
            return "in front";
        }
        return Math.abs(angle) > 165
                ? "at the back"
                : String.format(Locale.ROOT, "%.0f° to the player's %s", Math.abs(angle), angle > 0 ? "right" : "left");
    }

    private static String mark(int number, Spot at, PinSort sort) {
        return String.format(
                Locale.ROOT,
                "<g transform=\"translate(%.1f %.1f)\"><g class=\"pin-turn\"><title>Pin %d: %s</title><path class=\"pin\""
                        + " d=\"M0 0L-7 -18A10 10 0 1 1 7 -18Z\"/><text class=\"pin-no\" y=\"-20\">%d</text></g></g>",
                at.x(),
                at.y(),
                number,
                sort.word(),
                number);
    }

    private static <W extends Enum<W> & Word> List<PlacePanel.Option> options(W[] values, @Nullable W chosen) {
        return Stream.of(values)
                .map(value -> new PlacePanel.Option(value.word(), value.word(), value == chosen))
                .toList();
    }
}
