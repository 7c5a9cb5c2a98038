package hornwright.bench.archive;

import hornwright.engines.belief.Sighting;
import hornwright.engines.belief.Standing;
import hornwright.engines.belief.Workshop;
import hornwright.engines.belief.WorkshopAnswer;
import hornwright.engines.belief.WorkshopBelief;
import hornwright.engines.belief.WorkshopQuestion;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * All that is known of one place on the horns of one voice.
 *
 * <p>The probability comes from the looks alone, each weighted by its strength, through the change-over engine. The
 * grade comes from a ledger: all looks of the same era (the segment of the most probable segmentation) and every
 * statement that covers the serial. The two do not feed each other.
 */
final class PlaceArchive {
    /**
     * What is assumed of a works and of looks of strength 3 before anything is seen. Chosen on invented archives, seeds 1 to
     * 1000, because with these what is stated is so as often as stated; see docs/truth.md.
     */
    static final Workshop ASSUMED = new Workshop(List.of(0.003, 0.03), 0.05, 0.2);

    /** Stands for whatever nobody has seen yet where only one material was seen; never named. */
    private static final String UNSEEN = "";

    /** What a look of strength 0 to 3 counts for; see docs/method/belief.md. */
    private static final double[] WEIGHTS = {0, 0.25, 0.75, 1};

    /** One look with the horn it was taken at and what it can carry, which is asked for again and again. */
    record Look(Observation seen, Witness witness, int strength) {
        Look(Observation seen, Witness witness) {
            this(
                    seen,
                    witness,
                    Strength.of(seen.on(seen.material(), witness), SerialRange.one(witness.serial()))
                            .value());
        }

        static Optional<Look> of(Observation seen, @Nullable Witness witness) {
            return witness == null ? Optional.empty() : Optional.of(new Look(seen, witness));
        }

        Evidence on(String material) {
            return seen.on(material, witness);
        }

        long serial() {
            return witness.serial();
        }

        Course.Mark mark() {
            return new Course.Mark(
                    seen.id(),
                    witness.id(),
                    serial(),
                    seen.material(),
                    seen.origin().kind(),
                    strength());
        }
    }

    private final String place;
    private final List<Witness> witnesses;
    private final List<Look> looks;
    private final List<Statement> statements;
    private final List<Resolution> resolutions;
    private final @Nullable SearchLog search;
    private final List<String> materials;
    private final List<String> possible;
    private final Answers answers;

    PlaceArchive(
            String place,
            List<Witness> witnesses,
            List<Look> looks,
            List<Statement> statements,
            List<Resolution> resolutions,
            @Nullable SearchLog search,
            Answers answers) {
        this.place = place;
        this.answers = answers;
        this.witnesses = witnesses;
        this.looks =
                looks.stream().sorted(Comparator.comparing(l -> l.seen().id())).toList();
        this.statements = statements;
        this.resolutions = resolutions;
        this.search = search;
        TreeSet<String> named = new TreeSet<>();
        looks.forEach(look -> named.add(look.seen().material()));
        this.materials = List.copyOf(named);
        List<String> possible = new ArrayList<>(materials);
        if (possible.size() == 1) {
            possible.add(UNSEEN);
        }
        this.possible = List.copyOf(possible);
    }

    String place() {
        return place;
    }

    List<String> materials() {
        return materials;
    }

    AsBuiltAt at(long serial) {
        if (looks.isEmpty()) {
            return new Unseen(place, witnesses, statements, resolutions, search).at(serial);
        }
        WorkshopAnswer answer = answers.to(question(List.of(), List.of(serial)));
        WorkshopAnswer.At here = answer.at().getFirst();
        Map<String, Double> probabilities = named(here.probabilities());
        String material = mostProbable(probabilities);
        Era era = Era.around(serial, material, answer);
        Detail detail = Detail.of(in(era.serials()), material);
        return new AsBuiltAt(
                place,
                serial,
                material,
                probabilities,
                grade(serial, material, era, here.standing()),
                here.standing(),
                era.serials(),
                neighbours(serial),
                era.nearestChange(),
                era.habit(),
                detail.colour(),
                detail.thicknessAtLeastMm(),
                detail.adhesive(),
                detail.shape(),
                detail.cut(),
                examined(era.serials(), material),
                items(serial, material, era.serials()).stream()
                        .map(Evidence::id)
                        .toList());
    }

    /** The chance of each material at one serial, from the looks and a few more imagined. */
    Map<String, Double> chances(long serial, List<Sighting> imagined) {
        return WorkshopBelief.at(question(imagined, List.of(serial))).getFirst().probabilities();
    }

    /** What a look at each of these serials would most likely show. */
    List<Map<String, Double>> likely(List<Long> serials) {
        return WorkshopBelief.at(question(List.of(), serials)).stream()
                .map(WorkshopAnswer.At::shares)
                .toList();
    }

    private WorkshopQuestion question(List<Sighting> imagined, List<Long> at) {
        List<Sighting> sightings = new ArrayList<>(sightings());
        sightings.addAll(imagined);
        return new WorkshopQuestion(sightings, possible, ASSUMED, at);
    }

    private static Map<String, Double> named(Map<String, Double> chances) {
        Map<String, Double> named = new LinkedHashMap<>(chances);
        named.remove(UNSEEN);
        return named;
    }

    /** From one end of what is shown to the other. */
    Course course(SerialRange shown) {
        if (looks.isEmpty()) {
            return new Course(place, List.of(), List.of(), List.of(), List.of());
        }
        TreeSet<Long> serials = new TreeSet<>(List.of(shown.from(), shown.to()));
        sightings().stream().map(Sighting::serial).filter(shown::contains).forEach(serials::add);
        WorkshopAnswer answer = answers.to(question(List.of(), List.copyOf(serials)));
        return new Course(
                place,
                looks.stream()
                        .map(Look::mark)
                        .sorted(Comparator.comparingLong(Course.Mark::serial).thenComparing(Course.Mark::material))
                        .toList(),
                answer.at().stream()
                        .map(at -> new Course.Step(at.serial(), named(at.shares())))
                        .toList(),
                Era.changes(answer),
                Era.habits(answer));
    }

    /** Looks of one origin at one serial count once: the best of them. One that was set aside in writing counts no more. */
    List<Sighting> sightings() {
        record Source(long serial, String origin) {}
        Set<String> aside = resolutions.stream().map(Resolution::evidence).collect(Collectors.toUnmodifiableSet());
        Map<Source, Look> best = new LinkedHashMap<>();
        for (Look look : looks) {
            if (aside.contains(look.seen().id())) {
                continue;
            }
            best.merge(
                    new Source(look.serial(), look.seen().origin().id()),
                    look,
                    (known, other) -> other.strength() > known.strength() ? other : known);
        }
        return best.values().stream()
                .map(look -> new Sighting(look.serial(), look.seen().material(), WEIGHTS[look.strength()]))
                .toList();
    }

    static String mostProbable(Map<String, Double> probabilities) {
        String best = probabilities.keySet().iterator().next();
        for (Map.Entry<String, Double> entry : probabilities.entrySet()) {
            best = entry.getValue() > probabilities.getOrDefault(best, 0.0) ? entry.getKey() : best;
        }
        return best;
    }

    private Grading grade(long serial, String material, Era era, Standing standing) {
        Grading ofEra = ledger(serial, material, era.serials()).grade();
        Grading elsewhere = fromElsewhere(ofEra, standing, era.serials().contains(serial));
        if (standing != Standing.OBSERVED) {
            return elsewhere;
        }
        Grading own = ledger(serial, material, SerialRange.one(serial)).grade();
        boolean disputed = !own.grade().isAtLeast(Grade.NOT_ASSESSED);
        return disputed || own.grade().isAtLeast(elsewhere.grade()) ? own : elsewhere;
    }

    /** A look proves its own serial only; what it says of others is worth less the less they are enclosed. */
    private static Grading fromElsewhere(Grading ofEra, Standing standing, boolean enclosed) {
        if (standing == Standing.EXTRAPOLATED) {
            return ofEra.with(ofEra.grade().atMost(Grade.REPORTED), "beyond every horn looked at: at most reported");
        }
        return enclosed
                ? ofEra.with(ofEra.grade().lowered(), "stands between others that agree: one grade lower")
                : ofEra.with(ofEra.grade().atMost(Grade.REPORTED), "between two that differ: at most reported");
    }

    private Ledger ledger(long serial, String material, SerialRange claimed) {
        return new Ledger(new Claim(claimed, place, material), items(serial, material, claimed), search, resolutions);
    }

    private List<Evidence> items(long serial, String material, SerialRange claimed) {
        List<Evidence> items = new ArrayList<>();
        in(claimed).forEach(look -> items.add(look.on(material)));
        items.addAll(Unseen.said(statements, serial, material));
        return items;
    }

    private List<Look> in(SerialRange serials) {
        return looks.stream().filter(look -> serials.contains(look.serial())).toList();
    }

    private @Nullable SerialRange neighbours(long serial) {
        long[] below =
                looks.stream().mapToLong(Look::serial).filter(s -> s <= serial).toArray();
        long[] above =
                looks.stream().mapToLong(Look::serial).filter(s -> s >= serial).toArray();
        long low = Arrays.stream(below).max().orElse(Long.MIN_VALUE);
        long high = Arrays.stream(above).min().orElse(Long.MAX_VALUE);
        if (below.length == 0) {
            return SerialRange.one(high);
        }
        return above.length == 0 ? SerialRange.one(low) : new SerialRange(low, high);
    }

    private Examined examined(SerialRange serials, String material) {
        Map<String, Boolean> agrees = new HashMap<>();
        in(serials)
                .forEach(look -> agrees.merge(
                        look.witness().id(), look.seen().material().equals(material), Boolean::logicalAnd));
        long known =
                witnesses.stream().filter(w -> serials.contains(w.serial())).count();
        long exceptions = agrees.values().stream().filter(agreed -> !agreed).count();
        return new Examined((int) known, agrees.size(), (int) exceptions);
    }
}
