package hornwright.bench.steps;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Layer;
import hornwright.bench.horn.Link;
import hornwright.bench.survey.Stage;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The steps of a restoration for one horn, from photographs to the second round after the rest. The order is bench
 * judgement: body before fit, fit before holes, holes before cups, all of these before pads, pads before heights,
 * heights before regulation. Where somebody looked and found nothing to do there is no step.
 */
public final class BenchSteps {
    private final Keywork keywork;
    private final StepWords say;
    private final BodySteps body;
    private final NothingToDo nothing;
    private final List<Step> steps = new ArrayList<>();
    private final Set<String> known = new HashSet<>();
    private final List<String> none = List.of();
    private final List<String> clean = List.of("clean");
    private final List<String> posts = List.of("posts");

    private BenchSteps(StepsAsked asked) {
        this.keywork = asked.keywork();
        this.say = new StepWords(asked);
        this.body = new BodySteps(asked);
        this.nothing = new NothingToDo(asked);
    }

    public static WorkGraph of(StepsAsked asked) {
        BenchSteps bench = new BenchSteps(asked);
        Keywork keywork = asked.keywork();
        bench.wholeHorn();
        List<Key> fromTheBody = keywork.keysInRemovalOrder().reversed();
        fromTheBody.forEach(bench::keyOnItsRod);
        bench.keywork.cups().forEach(bench::holeCupAndPad);
        fromTheBody.forEach(bench::height);
        bench.keywork.links().forEach(bench::regulation);
        bench.last();
        return WorkGraph.of(bench.steps);
    }

    private void wholeHorn() {
        add(Stage.ARRIVAL, "photographs", "", "Take the photographs of the list", List.of(), List.of());
        List<String> seen = List.of("photographs");
        add(Stage.ARRIVAL, "baseline.heights", "", "Measure the heights before anything is touched", List.of(), seen);
        add(Stage.ARRIVAL, "baseline.play", "", "Play it and write down the tuning", List.of(), seen);
        add(Stage.ARRIVAL, "baseline.leak", "", "Measure the total leak", List.of(), seen);
        List<String> baseline = List.of("baseline.heights", "baseline.play", "baseline.leak");
        add(Stage.STRIPPED, "strip", "", "Strip the keys in order of removal; bag and label", List.of(), baseline);
        add(Stage.STRIPPED, "pre-clean", "", "Clean off loose dirt", List.of(), List.of("strip"));
        List<String> solder = body.before("solder");
        List<String> dents = body.before("dents");
        List<String> finish = body.before("clean");
        body.steps().forEach(this::add);
        List<String> bare = List.of("pre-clean");
        add(Stage.BODY_STRAIGHT, "solder", "", "Mend solder joints, rings and braces", solder, bare);
        add(Stage.BODY_STRAIGHT, "dents", "", "Raise dents", dents, List.of("solder"));
        add(Stage.BODY_STRAIGHT, "posts", "", "Straighten tube and posts", List.of("solder", "dents"), List.of());
        add(Stage.BODY_STRAIGHT, "neck", "", "Fit neck and tenon", List.of(), List.of("solder"));
        add(Stage.BODY_STRAIGHT, "clean", "", "Clean and finish", finish, List.of("posts", "neck"));
    }

    private void keyOnItsRod(Key key) {
        String name = key.name().display();
        String spring = "spring." + key.id();
        String fit = "fit." + key.id();
        if (!nothing.toSpring(key)) {
            add(Stage.SPRINGS_SOUND, spring, key.id(), say.spring(key), none, clean);
        }
        if (!nothing.toFit(key)) {
            add(Stage.KEYS_FITTED, fit, key.id(), "Fit %s to its rod".formatted(name), posts, List.of(spring));
        }
        for (Map.Entry<String, String> contact : contactsOf(key).entrySet()) {
            String words = say.contact(contact.getValue());
            add(Stage.CORKED, "cork." + contact.getKey(), contact.getKey(), words, none, List.of(fit));
        }
    }

    private void holeCupAndPad(Cup cup) {
        String name = keywork.nameOf(cup).display();
        String fit = "fit." + cup.key();
        String level = "level." + cup.hole();
        String square = "cup." + cup.hole();
        String arm = "arm." + cup.hole();
        if (nothing.ringLeaks(cup)) {
            String ring = "ring." + cup.hole();
            String words = "Solder the ring of the %s hole and test it for air".formatted(name);
            add(Stage.BODY_STRAIGHT, ring, cup.hole(), words, none, List.of("solder"));
        }
        if (!nothing.toLevel(cup)) {
            List<String> ring = Stream.concat(posts.stream(), Stream.of("ring." + cup.hole()))
                    .toList();
            add(Stage.HOLES_LEVEL, level, cup.hole(), say.rim(cup), ring, List.of(fit));
        }
        add(
                Stage.CUPS_LEVEL,
                square,
                cup.id(),
                "Make the %s cup level and square".formatted(name),
                List.of(fit),
                List.of(level));
        add(
                Stage.TRIAL_FITTED,
                arm,
                cup.id(),
                "Try a pad in %s and set its arm".formatted(name),
                List.of(fit, level, square),
                none);
        add(
                Stage.PADDED,
                "pad." + cup.hole(),
                cup.id(),
                say.pad(cup),
                List.of(arm, level, square, fit),
                corks(keywork.keys().get(cup.key())));
    }

    private void height(Key key) {
        List<String> rests = Stream.concat(pads(key), corks(key).stream()).toList();
        if (!rests.isEmpty()) {
            add(
                    Stage.HEIGHTS_SET,
                    "height." + key.id(),
                    key.id(),
                    "Set how far %s opens".formatted(key.name().display()),
                    rests,
                    none);
        }
    }

    private void regulation(Link link) {
        Key driver = keywork.keys().get(link.driver());
        Key follower = keywork.keys().get(link.follower());
        List<String> rests = Stream.of(
                        Stream.of("cork." + link.id()),
                        pads(driver),
                        pads(follower),
                        height(driver.id()),
                        height(follower.id()))
                .flatMap(part -> part)
                .distinct()
                .filter(this::isStep)
                .toList();
        String words = "Regulate where %s %s %s"
                .formatted(
                        driver.name().display(),
                        link.kind().verb(),
                        follower.name().display());
        add(Stage.REGULATED, regulate(link), link.id(), words, rests, none);
    }

    private void last() {
        List<String> regulated = ids("regulate.");
        List<String> springs = ids("spring.");
        add(Stage.REGULATED, "octave", "", "Check the octave mechanism in its four states", octaveLinks(), regulated);
        add(Stage.REGULATED, "touch", "", "Balance the touch of the springs", springs, List.of("octave"));
        add(Stage.RESTED, "rest", "", "Let it rest for 24 to 72 hours", List.of(), List.of("touch"));
        List<String> rested = List.of("rest");
        add(Stage.RESTED, "second.pads", "", "Feel every pad again", ids("pad."), rested);
        add(Stage.RESTED, "second.heights", "", "Measure the heights again", ids("height."), rested);
        add(Stage.RESTED, "second.regulate", "", "Check the regulation again", regulated, rested);
    }

    private List<String> octaveLinks() {
        return keywork.links().stream()
                .filter(link -> link.coupling() != null)
                .map(BenchSteps::regulate)
                .toList();
    }

    private static String regulate(Link link) {
        return "regulate." + link.id().replaceFirst("^link\\.", "");
    }

    private Stream<String> pads(Key key) {
        return keywork.cups().stream().filter(cup -> cup.key().equals(key.id())).map(cup -> "pad." + cup.hole());
    }

    private static Stream<String> height(String key) {
        return Stream.of("height." + key);
    }

    private List<String> corks(Key key) {
        return key.stops().stream()
                .flatMap(stop -> stop.layers().stream())
                .map(layer -> "cork." + layer.place())
                .distinct()
                .filter(this::isStep)
                .toList();
    }

    /** Places of cork and felt at the key's stops, and what it acts through by the link's id; each with its place. */
    private Map<String, String> contactsOf(Key key) {
        Map<String, String> contacts = new LinkedHashMap<>();
        key.stops().stream()
                .flatMap(stop -> stop.layers().stream())
                .map(Layer::place)
                .filter(place -> !isStep("cork." + place))
                .forEach(place -> contacts.put(place, place));
        keywork.linksFrom(key).stream()
                .filter(link -> !link.layers().isEmpty())
                .forEach(
                        link -> contacts.put(link.id(), link.layers().getFirst().place()));
        return contacts;
    }

    /** What it needs of a step that is none on this horn is there already. */
    private void add(Stage stage, String id, String of, String words, List<String> restsOn, List<String> after) {
        add(new Step(id, stage, words, of, known(restsOn), known(after)));
    }

    private List<String> known(List<String> needs) {
        return needs.stream().filter(this::isStep).toList();
    }

    private void add(Step step) {
        steps.add(step);
        known.add(step.id());
    }

    private List<String> ids(String prefix) {
        return steps.stream().map(Step::id).filter(id -> id.startsWith(prefix)).toList();
    }

    private boolean isStep(String id) {
        return known.contains(id);
    }
}
