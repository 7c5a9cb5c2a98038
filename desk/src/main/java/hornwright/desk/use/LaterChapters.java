package hornwright.desk.use;

import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.job.Job;
import hornwright.bench.material.Sheet;
import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.bounce.BounceChapter;
import hornwright.bench.plan.bounce.BounceQuestion;
import hornwright.bench.plan.feel.FeelAnswer;
import hornwright.bench.plan.feel.FeelChapter;
import hornwright.bench.plan.feel.FeelQuestion;
import hornwright.bench.plan.instead.InsteadAnswer;
import hornwright.bench.plan.instead.InsteadChapter;
import hornwright.bench.plan.instead.InsteadQuestion;
import hornwright.bench.plan.regulation.LinksAnswer;
import hornwright.bench.plan.regulation.RegulationChapter;
import hornwright.bench.plan.regulation.SettledContact;
import hornwright.bench.plan.regulation.YieldAnswer;
import hornwright.bench.plan.regulation.YieldChapter;
import hornwright.bench.plan.seat.SeatAnswer;
import hornwright.bench.plan.seat.SeatChapter;
import hornwright.bench.plan.seat.SeatQuestion;
import hornwright.bench.plan.seat.SeatTotal;
import hornwright.bench.plan.settled.SettledAnswer;
import hornwright.bench.plan.settled.SettledChapter;
import hornwright.bench.plan.settled.SettledQuestion;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.PadClass;
import hornwright.bench.survey.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The chapters of a plan that take too long for a keystroke: reckoned when a page asks, remembered for each job until what
 * they depend on changes.
 */
public final class LaterChapters {
    private record Known(Object question, Object answer) {}

    private static final Pattern INSTEAD = Pattern.compile("instead[/ ]([a-z0-9.-]+)");

    private final ProposePlan plans;
    private final Map<String, Known> known = new ConcurrentHashMap<>();

    public LaterChapters(ProposePlan plans) {
        this.plans = plans;
    }

    public FeelAnswer feel(Job job) {
        return remembered("feel " + job.id(), FeelQuestion.of(plans.inputs(job)), FeelChapter::of);
    }

    /** How every key that a spring opens comes to rest. */
    public BounceChapter.Answer bounce(Job job) {
        return remembered("bounce " + job.id(), bounceQuestion(job), BounceChapter::of);
    }

    /** How every pad closes at a light touch, in the order of the keywork. */
    public List<SeatAnswer> seats(Job job) {
        return SeatQuestion.all(plans.inputs(job)).stream()
                .flatMap(ask -> seat(job, ask).stream())
                .toList();
    }

    /** One pad; empty when its hinge would lie inside its hole. */
    public Optional<SeatAnswer> seat(Job job, String cup) {
        return SeatQuestion.all(plans.inputs(job)).stream()
                .filter(ask -> ask.cup().id().equals(cup))
                .findFirst()
                .flatMap(ask -> seat(job, ask));
    }

    /** The same were all pads of one class, but for those with a class of their own. */
    public List<SeatAnswer> seatsIfAll(Job job, PadClass padClass) {
        PlanInputs inputs = plans.inputs(job);
        List<Decision> decisions = new ArrayList<>(inputs.decisions());
        decisions.add(new Decision.PadSoftness(null, padClass, "supposed"));
        String name = "seat if %s %s ".formatted(padClass.word(), job.id());
        return SeatQuestion.all(inputs.withDecisions(decisions)).stream()
                .flatMap(ask -> remembered(name + ask.cup().id(), ask, SeatChapter::of).stream())
                .toList();
    }

    private Optional<SeatAnswer> seat(Job job, SeatQuestion ask) {
        return remembered("seat " + job.id() + " " + ask.cup().id(), ask, SeatChapter::of);
    }

    /** The same for all pads together; empty for a horn without one. */
    public Optional<SeatTotal> allSeats(Job job) {
        List<SeatAnswer> seats = seats(job);
        return seats.isEmpty()
                ? Optional.empty()
                : Optional.of(remembered("seat total " + job.id(), seats, SeatTotal::of));
    }

    /** What the leaves under linked cups say, and what to add or take. */
    public LinksAnswer links(Job job) {
        return remembered("links " + job.id(), RegulationChapter.Question.of(plans.inputs(job)), RegulationChapter::of);
    }

    /** The same as it would be with other readings; nothing is remembered. */
    public LinksAnswer linksIfRead(Job job, List<Reading> readings) {
        return RegulationChapter.of(
                RegulationChapter.Question.of(plans.inputs(job).withReadings(readings)));
    }

    /** Changes at contacts that were accepted and wait to be done. */
    public List<SettledContact> settledContacts(Job job) {
        return SettledContact.of(plans.inputs(job));
    }

    /** The plan with what to add or take at contacts. */
    public Plan planWithLinks(Job job) {
        LinksAnswer links = links(job);
        return plans.of(job).withLinks(links.contacts(), links.becauses());
    }

    /** What a first assembly would come to. */
    public YieldAnswer firstAssembly(Job job) {
        PlanInputs inputs = plans.inputs(job);
        return remembered(
                "yield " + job.id(), new YieldChapter.Question(inputs.keywork(), inputs.rules()), YieldChapter::of);
    }

    /** Heights and regulation once what was laid new has packed down. */
    public SettledAnswer settled(Job job) {
        return remembered(
                "settled " + job.id(), SettledQuestion.of(plans.inputs(job), plans.of(job)), SettledChapter::of);
    }

    /** What the plan lays under the foot of a key. */
    public List<Sheet> underFoot(Job job, Key key) {
        return bounceQuestion(job).sheets(key);
    }

    /** One key as built, as planned, and with other centres and bumpers. */
    public BounceChapter.Answer bounce(Job job, String key) {
        return remembered(
                "bounce " + job.id() + " " + key,
                bounceQuestion(job),
                ask -> BounceChapter.sideBySide(ask, ask.keywork().keys().get(key)));
    }

    /** What could lie at a place instead of what the maker put there; empty where nothing is cut to size. */
    public Optional<InsteadAnswer> instead(Job job, String place) {
        return remembered(
                "instead " + job.id() + " " + place, new InsteadQuestion(plans.inputs(job), place), InsteadChapter::of);
    }

    /** The place an id of such an answer speaks of: "instead/foot.d/…", "bounce/d/instead foot.d of …". */
    private Becauses insteadIn(Job job, String id) {
        Matcher place = INSTEAD.matcher(id);
        return place.find() && plans.inputs(job).keywork().places().contains(place.group(1))
                ? instead(job, place.group(1)).map(InsteadAnswer::becauses).orElse(Becauses.none())
                : Becauses.none();
    }

    /** The because of that id with all it rests on, wherever it was reckoned; {@link Becauses#none} when it is nowhere. */
    public Becauses becauses(Job job, String id) {
        return Stream.<Supplier<Becauses>>of(
                        () -> plans.of(job).becauses(),
                        () -> rule(job, id),
                        () -> insteadIn(job, id),
                        () -> allSeats(job).map(SeatTotal::becauses).orElse(Becauses.none()),
                        () -> links(job).becauses(),
                        () -> id.startsWith("packed/") ? settled(job).becauses() : Becauses.none(),
                        () -> id.startsWith("yield/") ? firstAssembly(job).becauses() : Becauses.none(),
                        () -> feel(job).becauses(),
                        () -> bounce(job).becauses(),
                        () -> bounce(job, keyIn(job, id)).becauses())
                .map(Supplier::get)
                .filter(table -> table.find(id).isPresent())
                .findFirst()
                .orElse(Becauses.none());
    }

    /** A rule of the shop explains itself. */
    private Becauses rule(Job job, String id) {
        ShopRules rules = plans.inputs(job).rules();
        Reasons reasons = new Reasons();
        if (id.startsWith("rule ") && rules.find(id.substring(5)).isPresent()) {
            reasons.rule(rules, id.substring(5));
        }
        return reasons.table();
    }

    /** The key an id speaks of, "bounce/e/…"; the first of the horn when it speaks of none. */
    private String keyIn(Job job, String id) {
        Keywork keywork = plans.inputs(job).keywork();
        String[] words = id.split("/", 3);
        return words.length > 1 && keywork.keys().contains(words[1])
                ? words[1]
                : keywork.keys().list().getFirst().id();
    }

    private BounceQuestion bounceQuestion(Job job) {
        PlanInputs inputs = plans.inputs(job);
        return BounceQuestion.of(inputs, plans.of(job));
    }

    @SuppressWarnings("unchecked")
    private <Q, A> A remembered(String name, Q question, Function<Q, A> reckon) {
        Known last = known.get(name);
        if (last != null && last.question().equals(question)) {
            return (A) last.answer();
        }
        A answer = reckon.apply(question);
        known.put(name, new Known(question, answer));
        return answer;
    }
}
