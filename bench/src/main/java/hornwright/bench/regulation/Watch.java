package hornwright.bench.regulation;

import hornwright.bench.horn.ClosingSet;
import hornwright.bench.horn.Hold;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.Rest;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A spot where a feeler goes while a key is pressed, and which keys another finger holds out of the way meanwhile.
 *
 * @param press id of the key pressed
 * @param at id of the cup felt under, or of the contact felt into
 * @param away ids of the keys held away
 */
public record Watch(String press, String at, Set<String> away) {
    public Watch {
        away = Set.copyOf(away);
    }

    /** What is pressed, as the point of a reading says it. */
    public String point() {
        return "pressing " + press;
    }

    /**
     * Ids of the keys and links the finger works through: a change at one of them changes the gap. All branches count, since
     * one that lands first holds the others open.
     */
    public static Set<String> ways(Keywork keywork, String press) {
        Set<String> ways = new HashSet<>(Set.of(press));
        boolean grew = true;
        while (grew) {
            grew = false;
            for (Link link : keywork.links()) {
                if (link.kind().sense() > 0 && ways.contains(link.driver())) {
                    ways.add(link.id());
                    grew |= ways.add(link.follower());
                }
            }
        }
        return ways;
    }

    /** Every cup that must be shut while a key is pressed: those keys close and those they hold shut. */
    public static List<Watch> cups(Keywork keywork) {
        List<Watch> all = new ArrayList<>();
        for (ClosingSet set : keywork.sets()) {
            set.closes().forEach(cup -> all.add(new Watch(set.press(), cup, Set.of())));
        }
        for (Hold hold : keywork.holds()) {
            String away = hold.whileReleased();
            Set<String> held = away == null ? Set.of() : Set.of(away);
            hold.holds().forEach(cup -> all.add(new Watch(hold.press(), cup, held)));
        }
        return all;
    }

    /**
     * Contacts that hold shut a cup its own spring shuts anyway, as the low C sharp: its pad tells nothing, so the feeler
     * goes into the contact itself and reads the lost motion there.
     */
    public static List<Watch> holdDowns(Keywork keywork) {
        List<Watch> all = new ArrayList<>();
        for (Hold hold : keywork.holds()) {
            for (String id : hold.holds()) {
                Key key = keywork.keyOf(keywork.cups().get(id));
                if (key.spring().towards() == Rest.CLOSED) {
                    keywork.linksTo(key).stream()
                            .filter(link -> link.driver().equals(hold.press()))
                            .forEach(link -> all.add(new Watch(hold.press(), link.id(), Set.of())));
                }
            }
        }
        return all;
    }

    /** All spots at which readings tell of the contacts. */
    public static List<Watch> all(Keywork keywork) {
        List<Watch> all = new ArrayList<>(cups(keywork));
        all.addAll(holdDowns(keywork));
        return all;
    }
}
