package hornwright.bench.plan.settled;

import hornwright.bench.action.Action;
import hornwright.bench.horn.Link;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.settled.SettledAnswer.ContactLine;
import hornwright.bench.plan.settled.SettledAnswer.GapLine;
import hornwright.bench.plan.settled.SettledAnswer.HeightLine;
import hornwright.bench.plan.settled.SettledQuestion.Foot;
import hornwright.bench.regulation.Regulation;
import hornwright.bench.regulation.RegulationPlan.Expected;
import hornwright.bench.regulation.Watch;
import hornwright.bench.settling.Recheck;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/** From what every new layer loses to heights and gaps after the first weeks, the action run again with thinner contacts. */
public final class SettledChapter {
    private static final double HUNDREDTHS = 100;

    private final SettledQuestion ask;
    private final Reasons reasons = new Reasons();
    private final Regulation regulation;
    private final Map<String, PlannedNumber> losses = new LinkedHashMap<>();
    private final OctaveLoss octave;
    private final Map<Map<String, Double>, List<Expected>> runs = new HashMap<>();

    private SettledChapter(SettledQuestion ask) {
        this.ask = ask;
        Action action = Action.asBuilt(ask.keywork());
        regulation = Regulation.of(action, ask.rules());
        LinkLoss loss = new LinkLoss(ask, reasons);
        for (String id : Regulation.contacts(action)) {
            Link link = ask.keywork().links().get(id);
            if (loss.hasFresh(link)) {
                losses.put(id, loss.of(link));
            }
        }
        losses.values().removeIf(number -> !(number.value() > 0));
        octave = new OctaveLoss(ask.keywork(), loss, reasons, ask.rules().value("regulation.force-times"));
    }

    public static SettledAnswer of(SettledQuestion ask) {
        SettledChapter chapter = new SettledChapter(ask);
        List<HeightLine> heights = ask.feet().stream()
                .filter(foot -> foot.loses().value() > 0)
                .map(chapter::height)
                .toList();
        List<ContactLine> contacts = Stream.concat(
                        chapter.losses.entrySet().stream(),
                        chapter.octave.losses().entrySet().stream()
                                .filter(loss -> !chapter.losses.containsKey(loss.getKey())))
                .map(loss -> new ContactLine(loss.getKey(), loss.getValue()))
                .toList();
        List<Watch> cups = Watch.cups(ask.keywork());
        List<GapLine> gaps = chapter.losses.isEmpty()
                ? List.of()
                : cups.stream()
                        .filter(watch -> !chapter.through(watch).isEmpty())
                        .map(watch -> chapter.gap(watch, cups.indexOf(watch)))
                        .toList();
        PlannedNumber days = chapter.reasons.rule(ask.rules(), "settling.recheck_d");
        PlannedNumber over = chapter.over(days);
        return new SettledAnswer(
                heights,
                contacts,
                gaps,
                chapter.octave.vents(),
                days,
                over,
                ask.planned().and(chapter.reasons.table()));
    }

    private HeightLine height(Foot foot) {
        PlannedNumber rises = reasons.derive(
                "packed/" + foot.cup(),
                "what the layers of the stop lose x rise at the front edge for each mm",
                "mm",
                in -> in[0] * in[1],
                Because.Input.of("stop loses", foot.loses()),
                Because.Input.of("ratio", foot.ratio()));
        return new HeightLine(foot.cup(), foot.set(), foot.settled(), rises);
    }

    private GapLine gap(Watch watch, int spot) {
        List<String> links = through(watch);
        List<Because.Input> inputs = links.stream()
                .map(link -> Because.Input.of(name(link) + " loses", Objects.requireNonNull(losses.get(link))))
                .toList();
        String at = "%s %s".formatted(watch.press(), watch.at());
        double before = run(Map.of()).get(spot).gapMm();
        PlannedNumber gap = reasons.derive(
                "packed/gap " + at,
                "the action in balance under the finger, set so that all land together, then every contact thinner by what it"
                        + " loses",
                "mm",
                in -> packed(links, in, spot),
                inputs);
        PlannedNumber opens = reasons.derive(
                "packed/opens " + at,
                "that gap less the gap before anything packed: the action in balance twice",
                "mm",
                in -> packed(links, in, spot) - before,
                inputs);
        return new GapLine(watch, opens, gap, gap.value() <= ask.rules().value("regulation.closed_mm"));
    }

    /** Contacts with something new that the finger works through. */
    private List<String> through(Watch watch) {
        Set<String> ways = Watch.ways(ask.keywork(), watch.press());
        return losses.keySet().stream().filter(ways::contains).toList();
    }

    private double packed(List<String> links, double[] lost, int spot) {
        Map<String, Double> errors = new HashMap<>();
        losses.forEach((link, loss) -> errors.put(link, -loss.value()));
        for (int i = 0; i < lost.length; i++) {
            errors.put(links.get(i), -lost[i]);
        }
        return run(errors).get(spot).gapMm();
    }

    /** One run tells all gaps, and moving one loss to see what hangs on it serves every gap. */
    private List<Expected> run(Map<String, Double> errors) {
        return runs.computeIfAbsent(errors, regulation::rerun);
    }

    private PlannedNumber over(PlannedNumber days) {
        return reasons.derive(
                "packed/over",
                "1 - exp(-days / pace): fast at first, then ever slower",
                "of 100",
                in -> HUNDREDTHS * Recheck.done(in[0], in[1]),
                Because.Input.of("days until then", days),
                Because.Input.of("pace", reasons.rule(ask.rules(), "settling.days_d")));
    }

    private String name(String id) {
        Link link = ask.keywork().links().get(id);
        return "%s to %s".formatted(key(link.driver()), key(link.follower()));
    }

    private String key(String id) {
        return ask.keywork().keys().get(id).name().display();
    }
}
