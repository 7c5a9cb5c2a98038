package hornwright.desk.web.feel;

import hornwright.bench.bounce.KeyBounce.Verdict;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.bounce.BounceChapter;
import hornwright.bench.plan.bounce.Bounced;
import hornwright.bench.plan.feel.FeelAnswer;
import hornwright.bench.plan.feel.FeelAnswer.Evened;
import hornwright.bench.plan.feel.FeelAnswer.Finger;
import hornwright.bench.plan.feel.FeelAnswer.Moved;
import hornwright.bench.plan.feel.FeelAnswer.Weight;
import hornwright.bench.survey.ReadingKind;
import hornwright.desk.units.Shown;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.MeasureSheet;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.State;
import hornwright.desk.web.view.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Writes what the fingers feel. */
public final class FeelRows {
    private static final double TICK_N = 0.5;

    private final OnBench bench;
    private final FeelAnswer feel;
    private final BounceChapter.Answer bounce;
    private final double mostN;

    public FeelRows(OnBench bench, FeelAnswer feel, BounceChapter.Answer bounce) {
        this.bench = bench;
        this.feel = feel;
        this.bounce = bounce;
        this.mostN = 1.04
                * feel.hands().stream()
                        .flatMap(hand -> Stream.concat(
                                Stream.of(hand.band().most().value()),
                                hand.fingers().stream().map(FeelRows::high)))
                        .max(Double::compare)
                        .orElse(1.0);
    }

    public FeelPage page(Frame frame) {
        List<FeelPage.Tick> ticks = new ArrayList<>();
        for (double at = 0; at < mostN; at += TICK_N) {
            ticks.add(new FeelPage.Tick(along(at), Written.plain(at) + (at == 0 ? " N" : "")));
        }
        return new FeelPage(
                frame,
                Next.of(bench),
                weighed(),
                bench.address("measure") + "?sheet=" + MeasureSheet.TOUCHES.word(),
                ticks,
                feel.hands().stream().map(this::hand).toList(),
                feel.balances().stream().map(this::balance).toList(),
                bounces());
    }

    private String weighed() {
        List<Finger> all =
                feel.hands().stream().flatMap(hand -> hand.fingers().stream()).toList();
        long read = all.stream().filter(Finger::read).count();
        boolean before = bench.job().readings().current().stream()
                .anyMatch(reading -> reading.kind() == ReadingKind.TOUCH_WEIGHT);
        if (read == 0 && before) {
            return "What was weighed before springs and key fit were worked on no longer counts: these are the springs of"
                    + " the pattern.";
        }
        return read == 0
                ? "None of the %d touches was weighed yet: these are the springs of the pattern.".formatted(all.size())
                : "%d of %d touches were weighed; the rest are the springs of the pattern.".formatted(read, all.size());
    }

    private static double high(Finger finger) {
        return finger.force().value() + 2 * finger.force().u();
    }

    /** Where a force stands along a needle. */
    private String along(double newtons) {
        return String.format(Locale.ROOT, "%.1f%%", 100 * Math.clamp(newtons / mostN, 0, 1));
    }

    private FeelPage.Hand hand(FeelAnswer.Hand hand) {
        Evened even = hand.evening();
        double least = hand.band().least().value();
        return new FeelPage.Hand(
                hand.title(),
                figure("lightest usual", hand.band().least()),
                figure("heaviest usual", hand.band().most()),
                along(least),
                along(hand.band().most().value() - least),
                hand.fingers().stream().map(finger -> touch(hand, finger)).toList(),
                even == null ? "" : evenWords(even),
                even == null ? List.of() : evenness(even),
                even == null
                        ? List.of()
                        : even.changes().stream()
                                .map(change ->
                                        change.name() + (change.share().value() < 0 ? " weaker by" : " stronger by"))
                                .toList(),
                even == null
                        ? List.of()
                        : even.changes().stream()
                                .map(change -> share("change", change.share()))
                                .toList());
    }

    private static String evenWords(Evened even) {
        double sure = 2 * even.worst().u();
        if (even.even()) {
            return even.worst().value() + sure <= even.aim().value()
                    ? "Even: the worst touch is off the middle one by"
                    : "Even as far as is known; weigh the touches to be sure. The worst is off the middle one by";
        }
        String known = even.worst().value() - sure > even.aim().value() ? "Uneven" : "Perhaps uneven";
        String remedy = even.changes().isEmpty()
                ? "; no single spring mends it. The worst is off the middle one by"
                : ". Off the middle one, now → after:";
        return known + remedy;
    }

    private List<Figure> evenness(Evened even) {
        Figure now = share("worst touch off the middle one", even.worst());
        return even.changes().isEmpty() ? List.of(now) : List.of(now, share("after the changes", even.worstAfter()));
    }

    private FeelPage.Touch touch(FeelAnswer.Hand hand, Finger finger) {
        PlannedNumber force = finger.force();
        Optional<Moved> after = Optional.ofNullable(hand.evening()).stream()
                .flatMap(even -> even.after().stream())
                .filter(moved -> moved.key().equals(finger.key()))
                .filter(moved -> Math.abs(moved.change().value()) > 0.005)
                .findFirst();
        return new FeelPage.Touch(
                OnBench.capital(finger.name()),
                bench.address("lever/" + finger.key()),
                figure(finger.name(), force),
                state(hand.band().of(force)),
                finger.read(),
                along(force.value()),
                along(force.value() - 2 * force.u()),
                along(high(finger)),
                after.map(moved -> along(moved.force().value())).orElse(""),
                after.map(moved -> figure("then", moved.force())).stream().toList(),
                finger.wires().stream()
                        .map(wire -> new FeelPage.Wire(wire.sizeWord(), figure(wire.sizeWord(), wire.force())))
                        .toList());
    }

    private static State state(Weight weight) {
        return switch (weight) {
            case USUAL -> new State("done", weight.word());
            case LIGHT, HEAVY -> new State("stale", weight.word());
            case PERHAPS_LIGHT, PERHAPS_HEAVY -> new State("missing", weight.word());
        };
    }

    private FeelPage.Balance balance(FeelAnswer.Balance balance) {
        List<String> keys = balance.tries().stream()
                .flatMap(tried -> tried.touches().stream())
                .map(Moved::key)
                .distinct()
                .toList();
        return new FeelPage.Balance(
                "%s, held shut by the %s".formatted(OnBench.capital(balance.cupName()), balance.leverName()),
                figure("pad held with", balance.held()),
                figure("lever over cup spring", balance.times()),
                verdict(balance),
                keys.stream().map(this::name).toList(),
                balance.tries().stream().map(tried -> tried(tried, keys)).toList());
    }

    private static String verdict(FeelAnswer.Balance balance) {
        double sure = 2 * balance.held().u();
        double least = balance.least().value();
        if (balance.held().value() - sure >= least) {
            return "Held well.";
        }
        return balance.held().value() + sure < least
                ? "Held too weakly: it will leak or sound late."
                : "Whether that is enough cannot be said yet; a feeler under the pad tells, or the G♯ touch weighed.";
    }

    private String name(String key) {
        return OnBench.capital(bench.keywork().keys().get(key).name().display());
    }

    private FeelPage.Try tried(FeelAnswer.Try tried, List<String> keys) {
        List<List<Figure>> changes = keys.stream()
                .map(key -> tried.touches().stream()
                        .filter(moved -> moved.key().equals(key))
                        .map(moved -> signed(name(key), moved.change()))
                        .toList())
                .toList();
        @Nullable PlannedNumber held = tried.held();
        return new FeelPage.Try(
                OnBench.capital(tried.what()),
                held == null ? List.of() : List.of(figure("pad held with", held)),
                changes);
    }

    private List<FeelPage.Bounce> bounces() {
        double longest = bounce.keys().stream()
                .mapToDouble(key -> key.settled().value())
                .max()
                .orElse(100);
        return bounce.keys().stream()
                .map(key -> new FeelPage.Bounce(
                        OnBench.capital(key.name()),
                        bench.address("lever/" + key.key()),
                        SettlingPath.of(key.trace(), 1.15 * longest / 1e3),
                        state(key),
                        figure("comes back by", key.rebound()),
                        figure("quiet after", key.settled())))
                .toList();
    }

    static State state(Bounced key) {
        return switch (key.verdict()) {
            case Verdict.BOUNCES -> new State("stale", "bounces");
            case Verdict.QUIET -> new State("done", "quiet");
            case Verdict.CANNOT_BE_SAID -> new State("missing", "cannot be said");
        };
    }

    private Figure figure(String label, PlannedNumber number) {
        return Figure.of(bench.id(), label, number);
    }

    /** With its sign, as a change is said. */
    private Figure signed(String label, PlannedNumber number) {
        Figure plain = figure(label, number);
        return number.value() > 0 ? plain.withValue("+" + plain.value()) : plain;
    }

    /** A share in per cent. */
    private Figure share(String label, PlannedNumber number) {
        PlannedNumber percent = new PlannedNumber(
                100 * Math.abs(number.value()), "%", 100 * number.u(), number.because(), null, null, null);
        Figure exact = Objects.requireNonNull(figure(label, percent));
        return number.u() > 0 ? exact : exact.withValue(Shown.fixed(percent.value(), 0));
    }
}
