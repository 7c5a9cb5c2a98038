package hornwright.bench.plan.regulation;

import hornwright.bench.action.Action;
import hornwright.bench.horn.AdjustingScrew;
import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.PlannedLink;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.Measurements;
import hornwright.bench.plan.measured.ReadNumbers;
import hornwright.bench.plan.regulation.LinksAnswer.SpotLine;
import hornwright.bench.regulation.Correction;
import hornwright.bench.regulation.Feeler;
import hornwright.bench.regulation.Regulation;
import hornwright.bench.regulation.RegulationPlan;
import hornwright.bench.regulation.RegulationPlan.Counted;
import hornwright.bench.regulation.RegulationPlan.Expected;
import hornwright.bench.regulation.Watch;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Feeler readings into what to add or take at every contact at once, each number with its because. */
public final class RegulationChapter {
    /**
     * Everything the answer depends on.
     *
     * @param readings of gaps under linked cups and of gaps in contacts that still count
     */
    public record Question(Keywork keywork, List<Reading> readings, ShopRules rules) {
        public Question {
            readings = List.copyOf(readings);
        }

        public static Question of(PlanInputs inputs) {
            return of(inputs.keywork(), Measurements.of(inputs), inputs.rules());
        }

        public static Question of(Keywork keywork, Measurements measured, ShopRules rules) {
            List<Reading> felt = Stream.of(ReadingKind.LINKED_GAP, ReadingKind.CONTACT_GAP)
                    .flatMap(measured::all)
                    .toList();
            return new Question(keywork, felt, rules);
        }
    }

    private final Question ask;
    private final Reasons reasons = new Reasons();
    private final Map<Watch, PlannedNumber> read = new LinkedHashMap<>();
    private final RegulationPlan plan;

    private RegulationChapter(Question ask) {
        this.ask = ask;
        Regulation regulation = Regulation.of(Action.asBuilt(ask.keywork()), ask.rules());
        ReadNumbers numbers = new ReadNumbers(ask.rules(), reasons);
        for (Watch watch : regulation.spots()) {
            numbers.mean(
                            "leaf " + watch.press() + " " + watch.at(),
                            "mean of the gaps read",
                            ask.readings().stream()
                                    .filter(reading -> isAt(reading, watch))
                                    .toList())
                    .ifPresent(number -> read.put(watch, number));
        }
        plan = regulation.plan(read.entrySet().stream()
                .map(entry -> feeler(entry.getKey(), entry.getValue()))
                .toList());
    }

    public static LinksAnswer of(Question ask) {
        RegulationChapter chapter = new RegulationChapter(ask);
        List<PlannedLink> contacts =
                chapter.plan.corrections().stream().map(chapter::contact).toList();
        List<SpotLine> spots = new ArrayList<>();
        for (Watch watch : Watch.all(ask.keywork())) {
            spots.add(chapter.spot(watch, contacts));
        }
        return new LinksAnswer(contacts, spots, chapter.reasons.table());
    }

    private static boolean isAt(Reading reading, Watch watch) {
        return reading.of().equals(watch.at())
                && reading.point().equals(watch.point())
                && reading.observed() instanceof Observed.Amount amount
                && amount.value() >= 0;
    }

    private static Feeler feeler(Watch watch, PlannedNumber number) {
        return new Feeler(watch.press(), watch.at(), number.value(), Math.max(1e-3, number.u()));
    }

    private PlannedLink contact(Correction correction) {
        if (!correction.isFelt()) {
            return new PlannedLink(correction.link(), null, null, null, null, Correction.Work.LEAVE, false);
        }
        PlannedNumber error = error(correction);
        if (correction.changeMm() == 0) {
            return new PlannedLink(correction.link(), error, null, null, null, correction.work(), correction.told());
        }
        PlannedNumber change = change(correction, error);
        return new PlannedLink(
                correction.link(),
                error,
                change,
                correction.work() == Correction.Work.TAKE ? pulls(correction, change) : null,
                turns(correction, change),
                correction.work(),
                correction.told());
    }

    /** Each reading counts as far as the error follows it; what is left of the doubt is that of what nobody read. */
    private PlannedNumber error(Correction correction) {
        List<Because.Input> inputs = new ArrayList<>();
        List<Double> follows = new ArrayList<>();
        double square = correction.uMm() * correction.uMm();
        for (int i = 0; i < plan.readings().size(); i++) {
            double share = correction.follows().get(i);
            Counted counted = plan.readings().get(i);
            square -= share * share * counted.uMm() * counted.uMm();
            if (Math.abs(share) > 0.01) {
                follows.add(share);
                inputs.add(input(counted));
            }
        }
        PlannedNumber rest = rest(Math.sqrt(Math.max(0, square)));
        inputs.add(Because.Input.of("what no leaf told", rest));
        follows.add(1.0);
        double[] at = inputs.stream().mapToDouble(Because.Input::value).toArray();
        return reasons.derive(
                correction.link() + "/error",
                "the errors of all contacts that explain the readings best, in the elastic action as a whole, key twist and"
                        + " finger included; too thick above zero",
                "mm",
                in -> {
                    double value = correction.errorMm();
                    for (int i = 0; i < in.length; i++) {
                        value += follows.get(i) * (in[i] - at[i]);
                    }
                    return value;
                },
                inputs);
    }

    private Because.Input input(Counted counted) {
        Feeler feeler = counted.feeler();
        PlannedNumber number = read.entrySet().stream()
                .filter(each -> each.getKey().press().equals(feeler.press())
                        && each.getKey().at().equals(feeler.at()))
                .findFirst()
                .orElseThrow()
                .getValue();
        String name = name(feeler.at()) + " with " + key(feeler.press())
                + (feeler.gapMm() == 0 ? ", no leaf in: how deep is hardly known" : "");
        return new Because.Input(name, feeler.gapMm(), "mm", counted.uMm(), number.because());
    }

    private PlannedNumber rest(double u) {
        PlannedNumber wrong = reasons.rule(ask.rules(), "regulation.wrong_mm");
        return new PlannedNumber(0, "mm", u, wrong.because(), null, null, null);
    }

    private PlannedNumber change(Correction correction, PlannedNumber error) {
        double aside = correction.changeMm() + correction.errorMm();
        PlannedNumber side = reasons.leaf(
                new Because.BenchJudgement(
                        "regulation aside",
                        "set towards the side on which the pads forgive more, so that after one round all named gaps are most"
                                + " likely shut"),
                0,
                "mm",
                0);
        return reasons.derive(
                correction.link() + "/change",
                "the error taken out, and so much towards the side that forgives more",
                "mm",
                in -> in[1] - in[0],
                Because.Input.of("wrong by", error),
                new Because.Input("set aside by", aside, "mm", 0, side.because()));
    }

    private PlannedNumber pulls(Correction correction, PlannedNumber change) {
        return reasons.derive(
                correction.link() + "/pulls",
                "to sand off / what one pull takes",
                "pulls",
                in -> -in[0] / in[1],
                Because.Input.of("to sand off", change),
                Because.Input.of("one pull", reasons.rule(ask.rules(), "foot.pull_mm")));
    }

    /** A screw moves the contact by its pitch with every turn; how far it is turned by eye is doubtful too. */
    private @Nullable PlannedNumber turns(Correction correction, PlannedNumber change) {
        AdjustingScrew screw = ask.keywork().links().get(correction.link()).screw();
        if (screw == null) {
            return null;
        }
        PlannedNumber pitch = reasons.leaf(
                new Because.FromPattern(
                        "pitch " + correction.link(),
                        "pitch of the screw in the pattern " + ask.keywork().id(),
                        ask.keywork().id()),
                screw.pitchMm(),
                "mm",
                0);
        return reasons.derive(
                correction.link() + "/turns",
                "change / what one whole turn of the screw moves; in above zero",
                "turns",
                in -> in[0] / in[1],
                Because.Input.of("change", change),
                Because.Input.of("one turn", pitch));
    }

    private SpotLine spot(Watch watch, List<PlannedLink> contacts) {
        PlannedNumber number = read.get(watch);
        boolean pressed = read.keySet().stream().anyMatch(each -> each.press().equals(watch.press()));
        Optional<Expected> expected = pressed
                ? plan.expected().stream()
                        .filter(each -> each.watch().equals(watch))
                        .findFirst()
                : Optional.empty();
        double closed = ask.rules().value("regulation.closed_mm");
        return new SpotLine(
                watch,
                number,
                expected.map(each -> expected(each, contacts)).orElse(null),
                number == null ? null : number.value() <= closed);
    }

    /** The contacts' doubts go together, so the ± is of their joint spread, not the sum of the terms. */
    private @Nullable PlannedNumber expected(Expected expected, List<PlannedLink> contacts) {
        List<Because.Input> inputs = new ArrayList<>();
        for (PlannedLink line : contacts) {
            boolean bears = Watch.ways(ask.keywork(), expected.watch().press()).contains(line.link());
            PlannedNumber error = line.error();
            if (bears && error != null) {
                PlannedNumber change = line.change();
                inputs.add(
                        change == null
                                ? Because.Input.of(key(line.link()) + ", left as it is", error)
                                : Because.Input.of(key(line.link()) + ", altered by", change));
            }
        }
        if (inputs.isEmpty()) {
            return null;
        }
        String id =
                "gap %s %s".formatted(expected.watch().press(), expected.watch().at());
        PlannedNumber of = reasons.derive(
                id,
                "the action in balance under the finger with these changes made; the ± is of all doubts together, cutting"
                        + " included",
                "mm",
                in -> expected.gapMm(),
                inputs);
        return new PlannedNumber(of.value(), "mm", expected.uMm(), id, null, null, null);
    }

    private String name(String at) {
        return ask.keywork()
                .cups()
                .find(at)
                .map(cup -> ask.keywork().nameOf(cup).display())
                .orElseGet(() -> key(at));
    }

    /** The trade name of a key, or of a contact by the two keys it lies between. */
    private String key(String id) {
        Keywork keywork = ask.keywork();
        return keywork.keys()
                .find(id)
                .map(key -> key.name().display())
                .or(() -> keywork.links().find(id).map(link -> key(link.driver()) + " to " + key(link.follower())))
                .orElse(id);
    }
}
