package hornwright.desk.web.handover;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Place;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.settled.RecheckDay;
import hornwright.bench.plan.settled.SettledAnswer;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.steps.StepState;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.desk.web.plan.PackedRows;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.OnBench;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Writes what stands before and after, and what is still open. */
public final class HandOverRows {
    private final OnBench bench;

    public HandOverRows(OnBench bench) {
        this.bench = bench;
    }

    /** When new cork and felt have packed, by the rule of the shop. */
    public RecheckDay recheck(LocalDate today, ShopRules rules) {
        return RecheckDay.of(
                bench.job().work(), today, when -> LocalDate.ofInstant(when, ZoneId.systemDefault()), rules);
    }

    /** Why that day, with how much of the packing is over by then. */
    public HandOverPage.Proposed proposed(RecheckDay day, SettledAnswer settled) {
        LocalDate laid = day.laid();
        String from = laid == null
                ? "Nothing is written down as laid yet, so counted from today."
                : day.from().equals(laid)
                        ? "Counted from %s, when the last cork, felt or pad went in.".formatted(Clocks.day(laid))
                        : "The last cork, felt or pad went in on %s; packing goes on in play, so counted from today."
                                .formatted(Clocks.day(laid));
        return new HandOverPage.Proposed(
                Clocks.day(day.on()),
                Figure.of(bench.id(), "days until then", settled.days()).withValue(PackedRows.whole(settled.days())),
                from,
                Figure.of(bench.id(), "packing over by then", settled.over()));
    }

    public List<HandOverPage.HeightRow> heights() {
        return bench.keywork().cups().stream()
                .filter(cup -> bench.numberOf(cup, NumberName.HEIGHT_BEFORE).isPresent() || again(cup))
                .map(cup -> new HandOverPage.HeightRow(
                        bench.heading(cup),
                        bench.padOf(cup).map(Place::id).map(bench::placeAddress).orElse(""),
                        figure(cup, NumberName.HEIGHT_BEFORE),
                        again(cup) ? figure(cup, NumberName.HEIGHT_NOW) : List.of(),
                        figure(cup, NumberName.HEIGHT_TARGET)))
                .toList();
    }

    private boolean again(Cup cup) {
        return bench.job().readings().measuredAfter(Stage.ARRIVAL, ReadingKind.FRONT_HEIGHT, cup.id());
    }

    private List<Figure> figure(Cup cup, NumberName name) {
        return bench.numberOf(cup, name).map(number -> Figure.of(bench.id(), name, number)).stream()
                .toList();
    }

    public List<HandOverPage.Open> open() {
        long again = bench.plan().order().stream()
                .filter(step -> step.state() instanceof StepState.Recheck)
                .count();
        long undone = bench.plan().order().stream()
                .filter(step -> !(step.state() instanceof StepState.Good))
                .count();
        List<HandOverPage.Open> open = new ArrayList<>();
        if (undone > 0) {
            open.add(new HandOverPage.Open(
                    (undone == 1 ? "One step is" : undone + " steps are") + " not signed off"
                            + (again > 0 ? ", %d of them to be looked at again".formatted(again) : ""),
                    bench.address("work")));
        }
        long after = bench.keywork().cups().stream()
                .filter(cup -> bench.numberOf(cup, NumberName.HEIGHT_BEFORE).isPresent())
                .filter(cup -> !again(cup))
                .count();
        if (after > 0) {
            open.add(new HandOverPage.Open(
                    "%d heights were taken before and not since".formatted(after),
                    bench.address("measure?sheet=heights")));
        }
        return open;
    }

    /** The sign-off that counts, with the edit that brought it; empty while the horn has not gone back. */
    public HandOverPage.@Nullable Signed signed() {
        if (!(bench.job().decisions().get("hand-over") instanceof Decision.HandedOver handed)) {
            return null;
        }
        Optional<hornwright.bench.job.Posted> posted = bench.history().edits().reversed().stream()
                .filter(edit -> edit.edit() instanceof hornwright.bench.job.Decided decided
                        && decided.decision().equals(handed))
                .findFirst();
        long since = posted.map(edit -> bench.history().seq() - edit.seq()).orElse(0L);
        return new HandOverPage.Signed(
                posted.map(edit -> Clocks.day(edit.at())).orElse(""),
                "made from edit %d; looked at again on %s"
                        .formatted(handed.edit(), Clocks.day(LocalDate.parse(handed.recheck()))),
                bench.address("handover/signed.pdf"),
                since == 0
                        ? ""
                        : since == 1
                                ? "One edit since; this page shows the horn as it is now."
                                : "%d edits since; this page shows the horn as it is now.".formatted(since));
    }
}
