package hornwright.desk.web.fits;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.bounce.Bounced;
import hornwright.bench.plan.instead.Belongs;
import hornwright.bench.plan.instead.InsteadAnswer;
import hornwright.bench.plan.instead.Substitute;
import hornwright.desk.web.feel.SettlingPath;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.State;
import hornwright.desk.web.view.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Writes what else could lie at a place, and what each would change. */
public final class InsteadRows {
    /** A change below this, mm, no bench can tell. */
    private static final double TOLD = 0.005;

    /** A difference of rebounds below this, mm, is not told apart by an eye. */
    private static final double SEEN = 0.05;

    private final OnBench bench;
    private final InsteadAnswer answer;

    public InsteadRows(OnBench bench, InsteadAnswer answer) {
        this.bench = bench;
        this.answer = answer;
    }

    public InsteadPage.Row built() {
        return row(answer.built());
    }

    public List<InsteadPage.Row> others() {
        return answer.others().stream().map(this::row).toList();
    }

    /** The key a place belongs to by its cup, where its centre can be let go with another weight. */
    public static Optional<String> keyOfCentre(OnBench bench, Place place) {
        boolean centre = place.kind() == PlaceKind.RESONATOR
                || place.kind() == PlaceKind.RIVET
                || place.kind() == PlaceKind.PAD_CENTRE;
        return centre && place.belongsTo() instanceof Owner.OfCup owner
                ? Optional.of(bench.keywork().cups().get(owner.id())).map(Cup::key)
                : Optional.empty();
    }

    private InsteadPage.Row row(Substitute one) {
        Bounced bounce = one.bounce();
        List<Figure> figures = new ArrayList<>();
        figures.add(figure("Thick", one.thickness()));
        figures.add(figure("Stiffness", one.stiffness()));
        figures.add(figure("Weighs", one.mass()));
        figures.add(figure("Gives under 1 N", one.gives()));
        if (one.height() != null) {
            figures.add(figure("Cup stands higher by, once packed", one.height()));
        }
        if (bounce != null) {
            figures.add(figure("Comes back by", bounce.rebound()));
            figures.add(figure("Quiet after", bounce.settled()));
        }
        return new InsteadPage.Row(
                OnBench.capital(one.material()),
                state(one.belongs()),
                OnBench.capital(one.look().words()),
                "comes off again: %s, laid with %s"
                        .formatted(one.look().reversible(), one.look().laid()),
                shelf(one),
                bounce == null ? "" : SettlingPath.of(bounce.trace(), seconds()),
                ghost(one),
                figures,
                one.belongs() == Belongs.BUILT ? "" : changes(one));
    }

    private static State state(Belongs belongs) {
        return new State(
                switch (belongs) {
                    case BUILT, SEEN -> "done";
                    case OF_THE_TRADE -> "planned";
                    case LATER -> "stale";
                },
                belongs.word());
    }

    private static String shelf(Substitute one) {
        PlannedNumber sheet = one.sheet();
        return sheet == null
                ? "no sheet on the shelf is thick enough"
                : "from the %s mm sheet on the shelf".formatted(Written.plain(sheet.value()));
    }

    private double seconds() {
        return Stream.concat(Stream.of(answer.built()), answer.others().stream())
                        .flatMap(one -> Stream.ofNullable(one.bounce()))
                        .mapToDouble(one -> one.settled().value())
                        .max()
                        .orElse(100)
                * 1.15
                / 1e3;
    }

    private String ghost(Substitute one) {
        Bounced built = answer.built().bounce();
        return built == null || one.belongs() == Belongs.BUILT ? "" : SettlingPath.of(built.trace(), seconds());
    }

    /** Height, feel and bounce against what the maker fitted, in words. */
    private String changes(Substitute one) {
        List<String> said = new ArrayList<>();
        PlannedNumber height = one.height();
        if (height != null && Math.abs(height.value()) >= TOLD) {
            said.add("%s mm %s"
                    .formatted(
                            Written.value(Math.abs(height.value()), height.u()),
                            height.value() > 0 ? "higher" : "lower"));
        }
        double times = one.gives().value() / answer.built().gives().value();
        said.add(feel(times));
        Bounced now = answer.built().bounce();
        Bounced then = one.bounce();
        if (now != null && then != null) {
            double more = then.rebound().value() - now.rebound().value();
            said.add(
                    Math.abs(more) < SEEN
                            ? "bounces much the same"
                            : String.format(
                                    Locale.ROOT,
                                    "comes back by %.1f mm %s",
                                    Math.abs(more),
                                    more > 0 ? "more" : "less"));
        }
        return OnBench.capital(String.join("; ", said)) + ".";
    }

    private static String feel(double times) {
        if (times > 1.1) {
            return String.format(Locale.ROOT, "softer, gives %.1f times as much", times);
        }
        if (times < 0.1) {
            return "harder, hardly gives";
        }
        return times < 0.9 ? String.format(Locale.ROOT, "harder, gives %.1f as much", times) : "feels the same";
    }

    private Figure figure(String label, PlannedNumber number) {
        return Figure.of(bench.id(), label, number);
    }
}
