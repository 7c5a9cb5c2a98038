package hornwright.bench.horn;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What is said to close or hold together must be tied together by links. */
final class ReachCheck {
    private static final Set<LinkKind> CLOSING = EnumSet.of(LinkKind.CLOSES);
    private static final Set<LinkKind> SHUTTING = EnumSet.of(LinkKind.CLOSES, LinkKind.HOLDS_SHUT);

    private final Keywork keywork;
    private final Flaws flaws;

    private ReachCheck(Keywork keywork, Flaws flaws) {
        this.keywork = keywork;
        this.flaws = flaws;
    }

    static void look(Keywork keywork, Flaws flaws) {
        ReachCheck check = new ReachCheck(keywork, flaws);
        for (int i = 0; i < keywork.sets().size(); i++) {
            ClosingSet set = keywork.sets().get(i);
            check.pressed(set.press(), "/sets/" + i);
            check.reached(set.press(), set.closes(), CLOSING, "/sets/" + i + "/closes");
        }
        for (int i = 0; i < keywork.holds().size(); i++) {
            Hold hold = keywork.holds().get(i);
            check.pressed(hold.press(), "/holds/" + i);
            check.reached(hold.press(), hold.holds(), SHUTTING, "/holds/" + i + "/holds");
        }
    }

    private void pressed(String key, String at) {
        if (keywork.keys().get(key).touch() == null) {
            flaws.add(at + "/press", "no finger can press " + key + ": it has no touch", "a key with a touch");
        }
    }

    private void reached(String press, List<String> cups, Set<LinkKind> kinds, String at) {
        Set<String> keys = keysFrom(press, kinds);
        for (int i = 0; i < cups.size(); i++) {
            Cup cup = keywork.cups().get(cups.get(i));
            if (!keys.contains(cup.key())) {
                flaws.add(
                        at + "/" + i,
                        "no links lead from " + press + " to " + cup.id(),
                        "a cup that " + press + " closes itself or through links");
            }
        }
    }

    private Set<String> keysFrom(String press, Set<LinkKind> kinds) {
        Set<String> seen = new HashSet<>(Set.of(press));
        Deque<String> next = new ArrayDeque<>(seen);
        while (!next.isEmpty()) {
            for (Link link : keywork.linksFrom(keywork.keys().get(next.removeFirst()))) {
                if (kinds.contains(link.kind()) && seen.add(link.follower())) {
                    next.addLast(link.follower());
                }
            }
        }
        return seen;
    }
}
