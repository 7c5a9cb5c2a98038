package hornwright.desk.paper;

import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.plan.PlannedPlace;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Places of one kind that are treated alike for the same reason, so that two dozen pads are one line.
 *
 * @param places at least one
 */
record Alike(PlaceKind kind, String reason, List<PlannedPlace> places) {
    private static final int NAMED = 12;

    /** Groups what passes the test; what only goes with its pad or cork is told once elsewhere and left out here. */
    static List<Alike> of(
            Keywork keywork,
            List<PlannedPlace> places,
            Predicate<PlannedPlace> test,
            Function<PlannedPlace, String> reason) {
        Map<List<Object>, List<PlannedPlace>> groups = new LinkedHashMap<>();
        for (PlannedPlace place : places) {
            PlaceKind kind = keywork.places().get(place.id()).kind();
            if (kind != PlaceKind.ADHESIVE
                    && test.test(place)
                    && !reason.apply(place).isBlank()) {
                String material = place.material() == null ? "" : place.material();
                groups.computeIfAbsent(List.of(kind, material, reason.apply(place)), none -> new ArrayList<>())
                        .add(place);
            }
        }
        return groups.entrySet().stream()
                .map(group -> new Alike(
                        (PlaceKind) group.getKey().getFirst(),
                        (String) group.getKey().getLast(),
                        group.getValue()))
                .toList();
    }

    /** How many there are of each kind: "5 finishes, 19 screw heads". */
    static String kinds(Keywork keywork, List<PlannedPlace> places, Predicate<PlannedPlace> test) {
        Map<PlaceKind, Long> counts = places.stream()
                .filter(test)
                .map(place -> keywork.places().get(place.id()).kind())
                .filter(kind -> kind != PlaceKind.ADHESIVE)
                .collect(Collectors.groupingBy(kind -> kind, LinkedHashMap::new, Collectors.counting()));
        return counts.entrySet().stream()
                .map(entry -> entry.getValue() == 1
                        ? "the " + entry.getKey().spoken()
                        : entry.getValue() + " " + plural(entry.getKey()))
                .collect(Collectors.joining(", "));
    }

    /** "11 pads, kid leather over woven wool felt", or the one place by its name. */
    String what(Keywork keywork) {
        String material = places.getFirst().material();
        String named = places.size() == 1 ? nameOf(keywork, places.getFirst()) : places.size() + " " + plural(kind);
        return material == null ? named : named + ", " + material;
    }

    /** The names without the word of their kind, a dozen at most; empty when there is one only. */
    String which(Keywork keywork) {
        if (places.size() == 1) {
            return "";
        }
        String names = places.stream()
                .limit(NAMED)
                .map(place -> shorter(nameOf(keywork, place)))
                .collect(Collectors.joining(", "));
        return places.size() > NAMED ? names + " and " + (places.size() - NAMED) + " more" : names;
    }

    private String shorter(String name) {
        for (String end : List.of(" felt", " cork", " " + kind.spoken(), " link", " bumper", " guard", " rod head")) {
            if (name.endsWith(end)) {
                return shorter(name.substring(0, name.length() - end.length()));
            }
        }
        return name;
    }

    private static String nameOf(Keywork keywork, PlannedPlace place) {
        return keywork.places().get(place.id()).display();
    }

    private static String plural(PlaceKind kind) {
        return switch (kind) {
            case FOOT -> "feet of keys";
            case LINK -> "contacts between keys";
            case FINISH -> "finishes";
            case BUMPER -> "bumpers";
            case GUARD -> "guard felts";
            case PAD_CENTRE -> "pad centres";
            default -> kind.spoken() + "s";
        };
    }
}
