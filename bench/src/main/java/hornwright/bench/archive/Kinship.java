package hornwright.bench.archive;

import hornwright.engines.belief.Sighting;
import hornwright.engines.belief.Workshop;
import hornwright.engines.belief.WorkshopBelief;
import hornwright.engines.belief.WorkshopQuestion;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * One family of places. Beforehand each goes with the others nine times in ten and else its own way. Whether it does is
 * weighed by how likely its looks are after those of the others, against how likely they are alone; places that go their own way
 * are left out of the others.
 *
 * <p>A horn has one vote however many of its places were looked at: their weights are brought down so that together they
 * count as much as the strongest.
 */
final class Kinship {
    /** Bench judgement, tried on invented families; see docs/truth.md. */
    private static final double OWN_WAY = 0.1;

    /** With as many horns looked at a place speaks for itself. */
    static final int ENOUGH = 3;

    private static final int ROUNDS = 3;
    private static final double HALF = 0.5;
    private static final String UNSEEN = "";

    private final Map<String, List<Sighting>> looks = new LinkedHashMap<>();
    private final List<String> materials;
    private final Set<String> together;

    Kinship(Collection<PlaceArchive> places) {
        TreeSet<String> named = new TreeSet<>();
        for (PlaceArchive place : places) {
            List<Sighting> seen =
                    place.sightings().stream().filter(look -> look.weight() > 0).toList();
            looks.put(place.place(), seen);
            seen.forEach(look -> named.add(look.material()));
        }
        if (named.size() == 1) {
            named.add(UNSEEN);
        }
        materials = List.copyOf(named);
        together = together();
    }

    /** The places that go with each other: one after another is taken in or left out until none changes its side. */
    private Set<String> together() {
        Set<String> all = new LinkedHashSet<>();
        looks.forEach((place, seen) -> {
            if (!seen.isEmpty()) {
                all.add(place);
            }
        });
        Set<String> going = new LinkedHashSet<>(all);
        for (int round = 0; round < ROUNDS; round++) {
            Set<String> before = Set.copyOf(going);
            for (String place : all) {
                if (follows(place, going) >= HALF) {
                    going.add(place);
                } else {
                    going.remove(place);
                }
            }
            if (going.equals(before)) {
                break;
            }
        }
        return new LinkedHashSet<>(all.stream().filter(going::contains).toList());
    }

    /** Probability that a place goes with these others. */
    private double follows(String place, Set<String> others) {
        List<Sighting> own = own(place);
        List<Sighting> rest = votes(place, others);
        if (rest.isEmpty()) {
            return 1 - OWN_WAY;
        }
        double with = evidence(both(rest, own)) - evidence(rest);
        double alone = evidence(own);
        return 1 / (1 + OWN_WAY / (1 - OWN_WAY) * Math.exp(alone - with));
    }

    private List<Sighting> own(String place) {
        return looks.getOrDefault(place, List.of());
    }

    private static List<Sighting> both(List<Sighting> one, List<Sighting> other) {
        return Stream.concat(one.stream(), other.stream()).toList();
    }

    private double evidence(List<Sighting> seen) {
        return seen.isEmpty() ? 0 : WorkshopBelief.logEvidence(question(seen, List.of()));
    }

    private WorkshopQuestion question(List<Sighting> seen, List<Long> at) {
        Workshop assumed = PlaceArchive.ASSUMED;
        return new WorkshopQuestion(seen, materials, assumed, at);
    }

    /** One vote a horn, of all these places but one. */
    private List<Sighting> votes(String but, Set<String> places) {
        Map<Long, List<Sighting>> byHorn = new TreeMap<>();
        for (String place : places) {
            if (!place.equals(but)) {
                own(place)
                        .forEach(look -> byHorn.computeIfAbsent(look.serial(), none -> new ArrayList<>())
                                .add(look));
            }
        }
        List<Sighting> votes = new ArrayList<>();
        byHorn.values().forEach(horn -> {
            double sum = horn.stream().mapToDouble(Sighting::weight).sum();
            double most = horn.stream().mapToDouble(Sighting::weight).max().orElse(0);
            Map<String, Double> shared = new TreeMap<>();
            horn.forEach(look -> shared.merge(look.material(), look.weight() * most / sum, Double::sum));
            shared.forEach((material, weight) ->
                    votes.add(new Sighting(horn.getFirst().serial(), material, Math.min(1, weight))));
        });
        return votes;
    }

    /** What the family says of each of its places on which too few horns were looked at, where enough others were. */
    Map<String, Kin> at(long serial) {
        Map<String, Kin> kin = new LinkedHashMap<>();
        for (String place : looks.keySet()) {
            if (horns(own(place)) < ENOUGH) {
                List<Sighting> rest = votes(place, together);
                boolean several =
                        together.stream().filter(other -> !other.equals(place)).count() > 1;
                if (several && horns(rest) >= ENOUGH) {
                    kin.put(place, kin(place, rest, serial));
                }
            }
        }
        return kin;
    }

    private static int horns(List<Sighting> seen) {
        return (int) seen.stream().mapToLong(Sighting::serial).distinct().count();
    }

    private Kin kin(String place, List<Sighting> rest, long serial) {
        List<Sighting> own = own(place);
        double follows = follows(place, together);
        Map<String, Double> with = chances(both(rest, own), serial);
        Map<String, Double> alone = chances(own, serial);
        Map<String, Double> weighed = new HashMap<>();
        with.forEach((material, chance) ->
                weighed.put(material, follows * chance + (1 - follows) * alone.getOrDefault(material, 0.0)));
        weighed.remove(UNSEEN);
        List<String> others =
                together.stream().filter(other -> !other.equals(place)).toList();
        return new Kin(place, serial, others, horns(rest), own.size(), follows, new TreeMap<>(weighed));
    }

    private Map<String, Double> chances(List<Sighting> seen, long serial) {
        return WorkshopBelief.at(question(seen, List.of(serial))).getFirst().probabilities();
    }
}
