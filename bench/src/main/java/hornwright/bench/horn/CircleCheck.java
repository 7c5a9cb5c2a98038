package hornwright.bench.horn;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;

/**
 * Links that close in a circle. Each link of sense 1 says that its follower can stand open no further than ratio times its
 * driver plus a play. Followed all round the circle this becomes {@code q <= ratio q + play} for one key; a circle that
 * leaves the key less room than it needs to open, or does not let it close, is impossible.
 */
final class CircleCheck {
    private static final double ROUNDING_RAD = 1e-4;

    private final Keywork keywork;
    private final Flaws flaws;
    private final Set<Set<String>> told = new HashSet<>();

    private CircleCheck(Keywork keywork, Flaws flaws) {
        this.keywork = keywork;
        this.flaws = flaws;
    }

    static void look(Keywork keywork, Flaws flaws) {
        CircleCheck check = new CircleCheck(keywork, flaws);
        for (Key key : keywork.keys()) {
            check.walk(key, key, 1, 0, new ArrayDeque<>());
        }
    }

    private void walk(Key start, Key here, double ratio, double play, Deque<Link> path) {
        for (Link link : keywork.linksFrom(here)) {
            if (link.kind().sense() < 0 || path.contains(link)) {
                continue;
            }
            double step = link.driverArmMm() / link.followerArmMm();
            double room = (link.spaceMm() - link.thicknessMm()) / link.followerArmMm();
            path.addLast(link);
            if (link.follower().equals(start.id())) {
                judge(start, ratio * step, play * step + room, path);
            } else {
                walk(start, keywork.keys().get(link.follower()), ratio * step, play * step + room, path);
            }
            path.removeLast();
        }
    }

    private void judge(Key key, double ratio, double play, Deque<Link> circle) {
        double opens = Math.max(key.restRotationRad(), key.pressedRotationRad());
        boolean canOpen = opens <= ratio * opens + play + ROUNDING_RAD;
        boolean canClose = play >= -ROUNDING_RAD;
        if (canOpen && canClose) {
            return;
        }
        Set<String> keys = new HashSet<>();
        circle.forEach(link -> keys.add(link.driver()));
        if (told.add(keys)) {
            flaws.add(
                    "/links/" + keywork.links().list().indexOf(circle.getLast()),
                    "these links close in a circle that " + (canClose ? "keeps " : "never lets ") + key.id()
                            + (canClose ? " from opening to " + Numbers.rad(opens) + " rad" : " close") + ": "
                            + String.join(", ", circle.stream().map(Link::id).toList()),
                    "one link of the circle left out, or more space in it");
        }
    }
}
