package hornwright.engines.linkage;

import hornwright.engines.linkage.Mechanism.Cup;
import hornwright.engines.linkage.Mechanism.Link;
import hornwright.engines.linkage.Mechanism.Sense;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Thicknesses that make all cups of every set land together: with each key where its cup just closes, the gaps of the
 * links between pressed key and named cups are zero.
 */
public record Thicknesses(List<SetThickness> set, List<Conflict> conflicts) {
    /** Sets that differ by more than this cannot both be had, m. */
    private static final double TELLING = 1e-6;

    public Thicknesses {
        set = List.copyOf(set);
        conflicts = List.copyOf(conflicts);
    }

    /** In the order of the mechanism's links, each link once. */
    public static Thicknesses of(Mechanism mechanism, List<Landing> landings) {
        Map<Integer, List<Wish>> wishes = new TreeMap<>();
        for (Landing landing : landings) {
            Standing standing = Standing.of(mechanism, landing);
            for (int i : chain(mechanism, landing)) {
                Link link = mechanism.links().get(i);
                Wish wish = new Wish(landing.press().key(), standing.thickness(link));
                wishes.computeIfAbsent(i, none -> new ArrayList<>()).add(wish);
            }
        }
        List<SetThickness> set = new ArrayList<>();
        List<Conflict> conflicts = new ArrayList<>();
        wishes.forEach((i, asked) -> {
            Link link = mechanism.links().get(i);
            double thickness = asked.getFirst().thicknesses().getFirst();
            set.add(new SetThickness(link.id(), thickness, thickness - link.thickness()));
            Conflict conflict = conflict(link, asked);
            if (conflict.most() - conflict.least() > TELLING) {
                conflicts.add(conflict);
            }
        });
        return new Thicknesses(set, conflicts);
    }

    /** The mechanism with these thicknesses put in. */
    public Mechanism in(Mechanism mechanism) {
        return mechanism.withLinkThicknesses(
                set.stream().collect(Collectors.toMap(SetThickness::link, SetThickness::thickness)));
    }

    /** What one set asks of a link: one thickness, more if cups of one key that it names disagree. */
    private record Wish(String press, List<Double> thicknesses) {}

    private static Conflict conflict(Link link, List<Wish> asked) {
        List<Double> all =
                asked.stream().flatMap(wish -> wish.thicknesses().stream()).toList();
        return new Conflict(
                link.id(),
                asked.stream().map(Wish::press).distinct().toList(),
                all.stream().mapToDouble(Double::doubleValue).min().orElseThrow(),
                all.stream().mapToDouble(Double::doubleValue).max().orElseThrow());
    }

    /** Indices of the closing links that lie between the pressed key and the key of a named cup. */
    static List<Integer> chain(Mechanism mechanism, Landing landing) {
        Set<String> named = new HashSet<>(landing.cups());
        Set<String> ends = new HashSet<>();
        mechanism.cups().stream().filter(cup -> named.contains(cup.id())).forEach(cup -> ends.add(cup.key()));
        Set<String> driven = reached(mechanism, Set.of(landing.press().key()), Link::driver, Link::follower);
        Set<String> leading = reached(mechanism, ends, Link::follower, Link::driver);
        List<Integer> chain = new ArrayList<>();
        for (int i = 0; i < mechanism.links().size(); i++) {
            Link link = mechanism.links().get(i);
            if (link.sense() == Sense.CLOSES && driven.contains(link.driver()) && leading.contains(link.follower())) {
                chain.add(i);
            }
        }
        return chain;
    }

    private static Set<String> reached(
            Mechanism mechanism, Set<String> from, Function<Link, String> tail, Function<Link, String> head) {
        Set<String> reached = new HashSet<>(from);
        boolean grew = true;
        while (grew) {
            grew = false;
            for (Link link : mechanism.links()) {
                if (link.sense() == Sense.CLOSES && reached.contains(tail.apply(link))) {
                    grew |= reached.add(head.apply(link));
                }
            }
        }
        return reached;
    }

    /** Where keys stand when a set has landed; several places if named cups of one key disagree. */
    private record Standing(Map<String, List<Double>> rotations) {

        static Standing of(Mechanism mechanism, Landing landing) {
            Map<String, List<Double>> rotations = new TreeMap<>();
            for (String name : landing.cups()) {
                mechanism.cups().stream()
                        .filter(cup -> cup.id().equals(name))
                        .forEach(cup -> rotations
                                .computeIfAbsent(cup.key(), none -> new ArrayList<>())
                                .add(closed(cup)));
            }
            mechanism.cups().forEach(cup -> rotations.putIfAbsent(cup.key(), List.of(closed(cup))));
            return new Standing(rotations);
        }

        private static double closed(Cup cup) {
            return -cup.offset() / cup.arm();
        }

        private List<Double> of(String key) {
            return rotations.getOrDefault(key, List.of(0.0));
        }

        List<Double> thickness(Link link) {
            List<Double> all = new ArrayList<>();
            for (double driver : of(link.driver())) {
                for (double follower : of(link.follower())) {
                    all.add(link.space()
                            + link.driverArm() * driver
                            - link.sense().sign() * link.followerArm() * follower);
                }
            }
            return all;
        }
    }
}
