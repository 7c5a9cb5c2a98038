package hornwright.bench.plan.feel;

import hornwright.bench.horn.Key;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.feel.FeelAnswer.Band;
import hornwright.bench.plan.feel.FeelAnswer.Evened;
import hornwright.bench.plan.feel.FeelAnswer.Finger;
import hornwright.bench.plan.feel.FeelAnswer.Hand;
import hornwright.bench.plan.feel.FeelAnswer.Moved;
import hornwright.bench.plan.feel.FeelAnswer.Wire;
import hornwright.bench.plan.feel.Wires.Sized;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Answers what an action asks of the fingers. It takes the better part of a second, so a plan does not wait for it. */
public final class FeelChapter {
    private final FeelQuestion ask;
    private final Reasons reasons = new Reasons();
    private final KnownSprings springs;
    private final Touches touches;
    private final Wires wires;

    private FeelChapter(FeelQuestion ask) {
        this.ask = ask;
        this.springs = new KnownSprings(ask, reasons);
        this.touches = new Touches(ask, springs, reasons);
        this.wires = new Wires(ask, reasons);
    }

    public static FeelAnswer of(FeelQuestion ask) {
        return new FeelChapter(ask).answer();
    }

    private FeelAnswer answer() {
        List<Hand> hands = new ArrayList<>();
        Hands.of(ask.keywork()).forEach((hand, keys) -> {
            List<Finger> fingers =
                    keys.stream().flatMap(key -> finger(key).stream()).toList();
            if (!fingers.isEmpty()) {
                Band band = new Band(reasons.rule(ask.rules(), hand.least()), reasons.rule(ask.rules(), hand.most()));
                hands.add(new Hand(hand.title(), band, fingers, evened(hand, keys, fingers)));
            }
        });
        List<Finger> all =
                hands.stream().flatMap(hand -> hand.fingers().stream()).toList();
        return new FeelAnswer(
                springs.action(), hands, new Balances(ask, springs, wires, all, reasons).all(), reasons.table());
    }

    private @Nullable Evened evened(Hands hand, List<Key> keys, List<Finger> fingers) {
        KeyGroup group = keys.getFirst().group();
        return hand.evened()
                ? new Evenings(ask, springs, reasons).of(hand, group, fingers).orElse(null)
                : null;
    }

    private Optional<Finger> finger(Key key) {
        return touches.force(key).map(force -> {
            boolean read = springs.weight(key.id()).isPresent();
            Finger bare = new Finger(key.id(), key.name().display(), force, read, List.of());
            List<Wire> other = Stream.of(wires.thinner(key), wires.thicker(key))
                    .flatMap(Optional::stream)
                    .map(size -> wire(bare, key, size))
                    .toList();
            return new Finger(bare.key(), bare.name(), force, read, other);
        });
    }

    private Wire wire(Finger finger, Key key, Sized size) {
        PlannedNumber ratio = size.ratio();
        Moved moved = Springs.moved(reasons, springs, finger, key, ratio, "/" + size.mm());
        return new Wire(size.word(), size.mm(), moved.change(), moved.force());
    }
}
