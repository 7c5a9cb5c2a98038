package hornwright.bench.plan.pads;

import hornwright.bench.care.Hazard;
import hornwright.bench.plan.Advice;
import hornwright.bench.plan.PadChoice;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.survey.Observed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * What to do about a pad stack, least intrusive first: take it up in the adhesive while enough stays, else another pad,
 * and only then bend the cup. A stack is better a little shy than proud.
 */
final class PadAdvice {
    private final PadQuestion ask;
    private final PadRoom room;
    private final PadWindow window;
    private final List<Advice> list = new ArrayList<>();

    PadAdvice(PadQuestion ask, PadRoom room, PadWindow window) {
        this.ask = ask;
        this.room = room;
        this.window = window;
    }

    List<Advice> list() {
        trial();
        if (window.claimed()) {
            fit();
        }
        look();
        return List.copyOf(list);
    }

    private void trial() {
        Observed.TrialPad trial = room.trial();
        PlannedNumber proud = room.proud();
        if (trial == null || proud == null) {
            return;
        }
        switch (trial.verdict()) {
            case BACK_FIRST ->
                say(String.format(
                        Locale.ROOT,
                        "Touched the back first with %.2f mm at the front: the %.2f stack stands %.2f mm proud (± %.2f).",
                        trial.oppositeGapMm(),
                        trial.stackMm(),
                        proud.value(),
                        proud.u()));
            case FRONT_FIRST ->
                say(String.format(
                        Locale.ROOT,
                        "Touched the front first with %.2f mm at the back: the %.2f stack is %.2f mm shy (± %.2f).",
                        trial.oppositeGapMm(),
                        trial.stackMm(),
                        -proud.value(),
                        proud.u()));
            case LEVEL -> {}
        }
    }

    private void fit() {
        PlannedNumber chosen = window.chosen();
        PlannedNumber left = window.left();
        double least = ask.rules().value(ask.leastFilm());
        double most = ask.rules().value("adhesive.most_mm");
        if (chosen != null && left != null && left.value() >= least && left.value() <= most) {
            say(String.format(
                    Locale.ROOT,
                    "A %.1f pad leaves %.2f mm of adhesive (± %.2f): enough to float.",
                    chosen.value(),
                    left.value(),
                    left.u()));
            return;
        }
        if (chosen != null && left != null) {
            say(String.format(
                    Locale.ROOT,
                    "The %.1f pad that was decided leaves %.2f mm of adhesive, outside %.1f to %.1f.",
                    chosen.value(),
                    left.value(),
                    least,
                    most));
        }
        cannotBeMet();
    }

    /** Nothing on the shelf lies in the window. */
    private void cannotBeMet() {
        double low = Objects.requireNonNull(window.wanted().low());
        double high = Objects.requireNonNull(window.wanted().high());
        boolean tooThick = window.choices().stream().anyMatch(c -> c.fit() == PadChoice.Fit.TOO_LITTLE_LEFT);
        boolean tooThin = window.choices().stream().anyMatch(c -> c.fit() == PadChoice.Fit.TOO_MUCH_LEFT);
        say(String.format(Locale.ROOT, "Order a pad between %.1f and %.1f mm thick.", low, high));
        if (tooThin) {
            say("Or a thinner pad with card under it, stuck over the whole back.");
        }
        if (tooThick && !tooThin) {
            bend("Only if no thinner pad is to be had: bring the front of the cup down, in small steps.");
        } else if (tooThin && !tooThick) {
            bend("Only if no thicker pad is to be had: raise the front of the cup, in small steps.");
        }
    }

    private void look() {
        PlannedNumber projection = room.projection();
        double wanted = ask.rules().value("pad.thin-look_mm");
        double allowed = ask.rules().value("pad.thin-look-tolerance_mm");
        double off = projection.value() - wanted;
        if (room.trial() != null && Math.abs(off) > allowed + projection.u()) {
            bend(String.format(
                    Locale.ROOT,
                    "The pad face will stand %.1f mm below the cup rim, %.1f mm %s than the look wanted. No pad changes"
                            + " that; only bending the arm does.",
                    projection.value(),
                    Math.abs(off),
                    off > 0 ? "more" : "less"));
        }
    }

    private void bend(String words) {
        list.add(new Advice(words, List.of(Hazard.BENDING), rechecks()));
    }

    /** What rests on the arm: the key's own pad and height, and every link it takes part in. */
    private List<String> rechecks() {
        String key = ask.cup().key();
        Stream<String> links = ask.keywork().links().stream()
                .filter(link -> link.driver().equals(key) || link.follower().equals(key))
                .map(link -> "regulate." + link.id().replaceFirst("^link\\.", ""));
        return Stream.concat(Stream.of("pad." + ask.cup().hole(), "height." + key), links)
                .toList();
    }

    private void say(String words) {
        list.add(Advice.of(words));
    }
}
