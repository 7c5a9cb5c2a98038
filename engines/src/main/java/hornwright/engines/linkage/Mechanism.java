package hornwright.engines.linkage;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Set;

/**
 * Keys and everything that can push on them. A rotation of 0 is closed, positive is open; lengths in m along the arc,
 * stiffness in N/m, torque in N m, flex in rad per N m.
 */
public record Mechanism(List<Key> keys, List<Cup> cups, List<Stop> stops, List<Link> links, List<Spring> springs) {

    public Mechanism {
        keys = List.copyOf(keys);
        cups = List.copyOf(cups);
        stops = List.copyOf(stops);
        links = List.copyOf(links);
        springs = List.copyOf(springs);
        Set<String> known = unique("key", keys.stream().map(Key::id).toList());
        unique("cup", cups.stream().map(Cup::id).toList());
        unique("stop", stops.stream().map(Stop::id).toList());
        unique("link", links.stream().map(Link::id).toList());
        cups.forEach(cup -> need(known, cup.key()));
        stops.forEach(stop -> need(known, stop.key()));
        links.forEach(link -> need(known, link.driver()));
        links.forEach(link -> need(known, link.follower()));
        springs.forEach(spring -> need(known, spring.key()));
        if (links.stream().anyMatch(link -> link.driver().equals(link.follower()))) {
            throw new IllegalArgumentException("a link drives the key it sits on");
        }
    }

    /** A key; flex is how far it twists between its touch and its cup for the torque carried to the cup. */
    public record Key(String id, double flex) {
        public Key {
            notNegative(flex);
        }
    }

    /** A cup: gap = arm × rotation + offset; its pad pushes where the gap is negative. */
    public record Cup(String id, String key, double arm, double stiffness, double offset) {
        public Cup {
            positive(arm, stiffness);
        }
    }

    /** Which way a stop ends. */
    public enum Limits {
        OPENING,
        CLOSING
    }

    /** A stop: gap = clearance - thickness, less arm × rotation (opening) or plus it (closing). */
    public record Stop(
            String id, String key, double arm, double clearance, double thickness, double stiffness, Limits limits) {
        public Stop {
            positive(arm, stiffness);
        }

        /** +1 or -1: how the gap changes with arm × rotation. */
        int sign() {
            return limits == Limits.CLOSING ? 1 : -1;
        }
    }

    /** Which way a link pushes its follower. */
    public enum Sense {
        CLOSES(1),
        OPENS(-1);

        private final int sign;

        Sense(int sign) {
            this.sign = sign;
        }

        public int sign() {
            return sign;
        }
    }

    /** A link: gap = space - thickness + driver arm × driver rotation - sense × follower arm × follower rotation. */
    public record Link(
            String id,
            String driver,
            double driverArm,
            String follower,
            double followerArm,
            double space,
            double thickness,
            double stiffness,
            Sense sense) {
        public Link {
            positive(driverArm, followerArm, stiffness);
        }

        public Link withThickness(double changed) {
            return new Link(id, driver, driverArm, follower, followerArm, space, changed, stiffness, sense);
        }
    }

    /** Which way a spring pushes. */
    public enum Towards {
        OPEN,
        CLOSED
    }

    /** A spring: pushes with torque - rate × rotation when towards open, torque + rate × rotation when towards closed. */
    public record Spring(String key, double torque, double rate, Towards towards) {
        public Spring {
            notNegative(rate);
        }

        /** Torque at rotation 0, positive opening. */
        double opening() {
            return towards == Towards.OPEN ? torque : -torque;
        }
    }

    /** The same keys with other thicknesses at some links, by id. */
    public Mechanism withLinkThicknesses(Map<String, Double> thicknesses) {
        List<Link> changed = new ArrayList<>(links);
        changed.replaceAll(link -> link.withThickness(thicknesses.getOrDefault(link.id(), link.thickness())));
        return new Mechanism(keys, cups, stops, changed, springs);
    }

    /** Only the keys that can feel one of these through links, and what belongs to them; they rest as in the whole. */
    public Mechanism around(Set<String> some) {
        Set<String> kept = new HashSet<>(some);
        boolean grew = true;
        while (grew) {
            grew = false;
            for (Link link : links) {
                if (kept.contains(link.driver()) || kept.contains(link.follower())) {
                    grew |= kept.add(link.driver());
                    grew |= kept.add(link.follower());
                }
            }
        }
        return new Mechanism(
                keys.stream().filter(key -> kept.contains(key.id())).toList(),
                cups.stream().filter(cup -> kept.contains(cup.key())).toList(),
                stops.stream().filter(stop -> kept.contains(stop.key())).toList(),
                links.stream().filter(link -> kept.contains(link.driver())).toList(),
                springs.stream().filter(spring -> kept.contains(spring.key())).toList());
    }

    Index keyIndex() {
        return Index.of(keys.stream().map(Key::id).toList());
    }

    Index cupIndex() {
        return Index.of(cups.stream().map(Cup::id).toList());
    }

    private static Set<String> unique(String what, List<String> ids) {
        Set<String> seen = new HashSet<>(ids);
        if (seen.size() < ids.size()) {
            throw new IllegalArgumentException("a " + what + " id stands twice in " + ids);
        }
        return seen;
    }

    private static void need(Set<String> known, String key) {
        if (!known.contains(key)) {
            throw new NoSuchElementException("no key is called " + key);
        }
    }

    private static void positive(double... values) {
        for (double value : values) {
            if (!(value > 0)) {
                throw new IllegalArgumentException("arms and stiffnesses lie above zero, got " + value);
            }
        }
    }

    private static void notNegative(double value) {
        if (!(value >= 0)) {
            throw new IllegalArgumentException("flex and rate are not negative, got " + value);
        }
    }
}
