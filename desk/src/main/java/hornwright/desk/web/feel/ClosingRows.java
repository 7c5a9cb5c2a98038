package hornwright.desk.web.feel;

import hornwright.bench.care.Hazard;
import hornwright.bench.plan.ClassOfPad;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.seat.SeatAnswer;
import hornwright.bench.plan.seat.SeatTotal;
import hornwright.bench.survey.PadClass;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.MeasureSheet;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.State;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Writes how the pads close. */
public final class ClosingRows {
    private final OnBench bench;
    private final List<SeatAnswer> seats;
    private final Optional<SeatTotal> total;
    private final Map<PadClass, List<SeatAnswer>> ifAll;
    private final double most;

    /** @param ifAll the pads again, were all of one class */
    public ClosingRows(
            OnBench bench, List<SeatAnswer> seats, Optional<SeatTotal> total, Map<PadClass, List<SeatAnswer>> ifAll) {
        this.bench = bench;
        this.ifAll = Map.copyOf(ifAll);
        this.seats = List.copyOf(seats);
        this.total = total;
        this.most =
                seats.stream().mapToDouble(seat -> seat.seals().value()).max().orElse(1);
    }

    public ClosingPage page(Frame frame) {
        long read = seats.stream().filter(SeatAnswer::rimRead).count();
        String rims = read == 0
                ? "No rim of this horn has been measured; each is taken to be as rims mostly are."
                : "%d of %d rims were measured; the rest are taken to be as rims mostly are."
                        .formatted(read, seats.size());
        return new ClosingPage(
                frame,
                Next.of(bench),
                rims,
                bench.address("measure") + "?sheet=" + MeasureSheet.RIMS.word(),
                total.map(all -> List.of(
                                figure(bench, "all pads together", all.leak()),
                                figure(bench, "as one hole", all.hole())))
                        .orElse(List.of()),
                "A forecast of the pads alone. Neck, joints, rings, braces and pip are not in it, and no sum passes a horn"
                        + " while a site is untried.",
                new ClassRows(bench).of(ifAll),
                seats.stream().map(this::pad).toList());
    }

    private ClosingPage.Pad pad(SeatAnswer seat) {
        String key = bench.keywork().cups().get(seat.cup()).key();
        return new ClosingPage.Pad(
                OnBench.capital(seat.name()),
                bench.address("lever/" + key),
                bench.job().decisions().containsKey("pad-class." + seat.cup())
                        ? seat.pad().is().word() + " pad"
                        : "",
                compromise(seat),
                state(seat),
                figure(bench, "gap", seat.gap()),
                seat.gap().value() > 0.0005 ? String.format(Locale.ROOT, "at %.0f o'clock", seat.clock()) : "",
                figure(bench, "leak", seat.leak()),
                figure(bench, "force that seals", seat.seals()),
                String.format(Locale.ROOT, "%.1f%%", 100 * seat.seals().value() / most),
                told(bench, seat),
                helps(seat),
                remedies(bench, seat));
    }

    private static String compromise(SeatAnswer seat) {
        Double over = seat.compromiseOverMm();
        return over == null ? "" : ClassOfPad.compromise(over).words();
    }

    private static String helps(SeatAnswer seat) {
        return seat.remedies().stream()
                .filter(one -> one.leakAfter() != null)
                .min(Comparator.comparingDouble(ClosingRows::leakAfter))
                .map(SeatAnswer.Remedy::words)
                .orElse("");
    }

    private static double leakAfter(SeatAnswer.Remedy one) {
        PlannedNumber after = one.leakAfter();
        return after == null ? Double.MAX_VALUE : after.value();
    }

    private static State state(SeatAnswer seat) {
        return switch (seat.closes()) {
            case CLOSES -> new State("done", seat.closes().word());
            case MAY_LEAK -> new State("missing", seat.closes().word());
            case LEAKS -> new State("stale", seat.closes().word());
        };
    }

    private static List<Figure> told(OnBench bench, SeatAnswer seat) {
        List<Figure> told = new ArrayList<>();
        PlannedNumber touch = seat.atTouch();
        if (touch != null) {
            told.add(figure(bench, "more at the touch", touch));
        }
        PlannedNumber springs = seat.springs();
        if (springs != null) {
            told.add(figure(bench, "springs hold, times that", springs));
        }
        return told;
    }

    /** What stands beside the curve of a seat. */
    static List<Figure> figures(OnBench bench, SeatAnswer seat) {
        List<Figure> figures = new ArrayList<>(List.of(
                figure(bench, "gap at a light touch", seat.gap()),
                figure(bench, "leak at 1 kPa", seat.leak()),
                figure(bench, "as one hole", seat.hole()),
                figure(bench, "sealed with", seat.seals()),
                figure(bench, seat.pad().is().word() + " pad, stiffness", seat.stiffness())));
        figures.addAll(told(bench, seat));
        return figures;
    }

    static List<ClosingPage.Remedy> remedies(OnBench bench, SeatAnswer seat) {
        return seat.remedies().stream()
                .map(one -> {
                    PlannedNumber after = one.leakAfter();
                    return new ClosingPage.Remedy(
                            one.words(),
                            after == null ? List.of() : List.of(figure(bench, "leak then", after)),
                            one.cost(),
                            one.reversible(),
                            one.cautions().stream().map(Hazard::inOneLine).toList());
                })
                .toList();
    }

    private static Figure figure(OnBench bench, String label, PlannedNumber number) {
        return Figure.of(bench.id(), label, number);
    }
}
