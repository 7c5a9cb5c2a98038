package hornwright.bench.plan;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Layer;
import hornwright.bench.plan.contacts.ContactChapter;
import hornwright.bench.plan.heights.HeightAnswer;
import hornwright.bench.plan.heights.HeightChapter;
import hornwright.bench.plan.heights.HeightQuestion;
import hornwright.bench.plan.heights.LayerNow;
import hornwright.bench.plan.measured.Measurements;
import hornwright.bench.plan.missing.MissingChapter;
import hornwright.bench.plan.order.OrderChapter;
import hornwright.bench.plan.pads.PadAnswer;
import hornwright.bench.plan.pads.PadChapter;
import hornwright.bench.plan.pads.PadQuestion;
import hornwright.bench.plan.treatment.PlaceTreatment;
import hornwright.bench.plan.treatment.TreatmentChapter;
import hornwright.bench.steps.StepsAsked;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Treatment;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Makes plans. {@link #plan} is a pure function; a planner kept for one job gives the same plans and answers again only
 * the chapters whose own inputs changed: one question a cup for pads and heights, one for all treatments, one for the
 * order of work.
 */
public final class Planner {
    private static final Set<ReadingKind> CONTACTS =
            EnumSet.of(ReadingKind.THICKNESS, ReadingKind.LINK_SPACE, ReadingKind.HOLE);

    /** Readings that shape the steps themselves. */
    private static final Set<ReadingKind> STEPS = EnumSet.of(
            ReadingKind.RIM_CHECK,
            ReadingKind.RIM_GAP,
            ReadingKind.METAL_OFF,
            ReadingKind.PLAY,
            ReadingKind.HINGE,
            ReadingKind.PIN);

    private final Memo<TreatmentChapter.Question, Map<String, PlaceTreatment>> treatments = new Memo<>();
    private final Memo<PadQuestion, PadAnswer> pads = new Memo<>();
    private final Memo<HeightQuestion, HeightAnswer> heights = new Memo<>();
    private final Memo<ContactChapter.Question, Chapter> contacts = new Memo<>();
    private final Memo<OrderChapter.Question, OrderChapter> orders = new Memo<>();

    /** The plan of these inputs. */
    public static Plan plan(PlanInputs inputs) {
        return new Planner().replan(inputs);
    }

    /** The same, leaning on what this planner answered before. */
    public Plan replan(PlanInputs inputs) {
        Measurements measured = Measurements.of(inputs);
        Map<String, PlaceTreatment> treated = treatments.answer("treatments", treatment(inputs), TreatmentChapter::of);
        Map<String, PadAnswer> padAnswers = new LinkedHashMap<>();
        Map<String, HeightAnswer> heightAnswers = new LinkedHashMap<>();
        for (Cup cup : inputs.keywork().cups()) {
            padAnswers.put(cup.id(), pads.answer(cup.id(), pad(inputs, cup, measured), PadChapter::answer));
            heightAnswers.put(
                    cup.id(), heights.answer(cup.id(), height(inputs, cup, measured, treated), HeightChapter::answer));
        }
        Chapter sizes =
                contacts.answer("contacts", contact(inputs, measured, treated, heightAnswers), ContactChapter::of);
        OrderChapter order = orders.answer(
                "order",
                new OrderChapter.Question(
                        steps(inputs, measured, treated),
                        inputs.stage(),
                        inputs.workDone(),
                        inputs.chronicle(),
                        inputs.rules()),
                OrderChapter::of);
        List<Missing> missing = MissingChapter.of(new MissingChapter.Question(
                inputs.keywork(),
                inputs.serial() != null,
                inputs.useIsAgreed(),
                inputs.stage(),
                measured,
                padAnswers,
                heightAnswers,
                treated,
                inputs.rules()));
        return new Assembly(inputs, measured, treated, padAnswers, heightAnswers, sizes).plan(order, missing);
    }

    /** How many chapters had to be reckoned so far; the rest were remembered. */
    public long reckoned() {
        return treatments.reckoned() + pads.reckoned() + heights.reckoned() + contacts.reckoned() + orders.reckoned();
    }

    private static StepsAsked steps(PlanInputs inputs, Measurements measured, Map<String, PlaceTreatment> treated) {
        Map<String, Treatment> treatments = new LinkedHashMap<>();
        treated.values().stream()
                .filter(place -> place.found() != null || place.decided())
                .forEach(place -> treatments.put(place.place(), place.treatment()));
        List<Reading> readings = STEPS.stream().flatMap(measured::all).toList();
        return new StepsAsked(inputs.keywork(), treatments, readings, inputs.rules());
    }

    private static TreatmentChapter.Question treatment(PlanInputs inputs) {
        return new TreatmentChapter.Question(
                inputs.keywork(),
                inputs.findings(),
                inputs.groupFindings(),
                inputs.decisions(),
                inputs.asBuilt(),
                inputs.use());
    }

    private static PadQuestion pad(PlanInputs inputs, Cup cup, Measurements measured) {
        Double decided = null;
        for (Decision decision : inputs.decisions()) {
            if (decision instanceof Decision.PadThickness chosen && chosen.cup().equals(cup.id())) {
                decided = chosen.thicknessMm();
            }
        }
        return PadQuestion.of(inputs.keywork(), cup, measured, decided, inputs.stock(), inputs.rules());
    }

    private static HeightQuestion height(
            PlanInputs inputs, Cup cup, Measurements measured, Map<String, PlaceTreatment> treated) {
        return new HeightQuestion(
                inputs.keywork(),
                cup,
                measured.before(ReadingKind.FRONT_HEIGHT, cup.id()),
                measured.of(ReadingKind.FRONT_HEIGHT, cup.id()),
                measured.of(ReadingKind.CENTRE_HEIGHT, cup.id()),
                measured.of(ReadingKind.HOLE, cup.hole()),
                measured.of(ReadingKind.AXIS_TO_CENTRE, cup.id()),
                measured.of(ReadingKind.TRIAL_SHIM, cup.key()),
                measured.of(ReadingKind.FOOT_CLEARANCE, cup.key()),
                measured.of(ReadingKind.AXIS_TO_FOOT, cup.key()),
                inputs.keywork().keyOf(cup).stop().layers().stream()
                        .map(layer -> layer(layer, measured, treated))
                        .toList(),
                decidedHeight(inputs, cup),
                inputs.stock(),
                inputs.rules());
    }

    private static LayerNow layer(Layer layer, Measurements measured, Map<String, PlaceTreatment> treated) {
        PlaceTreatment treatment = Objects.requireNonNull(treated.get(layer.place()));
        Found found = treatment.found();
        return new LayerNow(
                layer,
                measured.of(ReadingKind.THICKNESS, layer.place()),
                found == null ? null : there(found),
                found != null && found.byGroup(),
                treatment.material(),
                treatment.mayNeedNew());
    }

    private static @Nullable Double there(Found found) {
        return found.condition() == hornwright.bench.survey.Condition.MISSING ? Double.valueOf(0) : found.thicknessMm();
    }

    private static Decision.@Nullable Height decidedHeight(PlanInputs inputs, Cup cup) {
        Decision.Height decided = null;
        for (Decision decision : inputs.decisions()) {
            if (decision instanceof Decision.Height height && height.cup().equals(cup.id())) {
                decided = height;
            }
        }
        return decided;
    }

    private static List<Decision.Contact> decidedContacts(PlanInputs inputs) {
        Map<String, Decision.Contact> last = new LinkedHashMap<>();
        for (Decision decision : inputs.decisions()) {
            if (decision instanceof Decision.Contact contact) {
                last.put(contact.link(), contact);
            }
        }
        return List.copyOf(last.values());
    }

    private static ContactChapter.Question contact(
            PlanInputs inputs,
            Measurements measured,
            Map<String, PlaceTreatment> treated,
            Map<String, HeightAnswer> heights) {
        List<Reading> readings = CONTACTS.stream().flatMap(measured::all).toList();
        Set<String> feet = new LinkedHashSet<>();
        heights.values().forEach(answer -> {
            if (answer.foot() != null) {
                feet.add(answer.foot());
            }
        });
        return new ContactChapter.Question(
                inputs.keywork(), treated, readings, feet, decidedContacts(inputs), inputs.stock(), inputs.rules());
    }
}
