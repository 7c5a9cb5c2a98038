package hornwright.bench.plan.feel;

import hornwright.bench.action.Action;
import hornwright.bench.feel.SpringChange;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Spring;
import hornwright.bench.horn.SpringSection;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.stock.StockItem;
import hornwright.bench.stock.StockKind;
import hornwright.engines.spring.Section;
import hornwright.engines.spring.SpringInput;
import hornwright.engines.spring.SpringInput.Bend;
import hornwright.engines.spring.SpringInput.Model;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** One needle size down and one up, bent as far as the spring that is there. */
final class Wires {
    /** Needle sizes of a drawer, mm: common practice, typical, check yours. */
    private static final List<Double> USUAL =
            List.of(0.64, 0.71, 0.76, 0.81, 0.86, 0.91, 0.97, 1.02, 1.07, 1.14, 1.22, 1.27, 1.35, 1.4, 1.47, 1.6);

    /** Sizes nearer than this are one size, mm. */
    private static final double ONE_SIZE = 0.015;

    /** One standard uncertainty of the wire of a packet, mm: bench judgement. */
    private static final double DRAWN_TO = 0.006;

    private static final double MM = 1e-3;

    private final Reasons reasons;
    private final NavigableSet<Double> sizes = new TreeSet<>(USUAL);

    Wires(FeelQuestion ask, Reasons reasons) {
        this.reasons = reasons;
        ask.stock().of(StockKind.NEEDLE_SPRING).map(StockItem::diameterMm).forEach(this::add);
    }

    private void add(@Nullable Double size) {
        if (size != null) {
            sizes.add(size);
        }
    }

    /** The next size in that direction and how many times as strong it is there. */
    record Sized(double mm, PlannedNumber ratio) {
        /** "1.02 mm". */
        String word() {
            return String.format(java.util.Locale.ROOT, "%.2f mm", mm);
        }
    }

    Optional<Sized> thinner(Key key) {
        return needle(key).map(now -> sizes.lower(now - ONE_SIZE)).map(size -> sized(key, size));
    }

    Optional<Sized> thicker(Key key) {
        return needle(key).map(now -> sizes.higher(now + ONE_SIZE)).map(size -> sized(key, size));
    }

    private static Optional<Double> needle(Key key) {
        return key.spring().section() instanceof SpringSection.Needle needle
                ? Optional.of(needle.diameterMm())
                : Optional.empty();
    }

    private Sized sized(Key key, double size) {
        PlannedNumber there = wire(
                "wire " + key.id(),
                "needle of " + key.name().display() + " in the pattern",
                key.spring().thicknessMm());
        PlannedNumber other = wire("wire " + size, "needle of that size, drawn to about a hundredth", size);
        PlannedNumber ratio = reasons.derive(
                "feel/" + key.id() + "/" + size + "/pull",
                "how many times as hard the other wire pulls, as long and bent as far (spring engine, large bending)",
                "",
                in -> ratio(key.spring(), in[0], in[1]),
                Because.Input.of("wire there", there),
                Because.Input.of("other wire", other));
        return new Sized(size, ratio);
    }

    private PlannedNumber wire(String id, String says, double mm) {
        return reasons.leaf(new Because.CommonPractice(id, says), mm, "mm", DRAWN_TO);
    }

    /** The pull of another wire of the same length and metal at the same bend. */
    static double ratio(Spring spring, double nowMm, double otherMm) {
        double cradle = spring.cradleArmMm() * MM;
        double force = spring.torqueNmm() * MM / cradle;
        double bent = bend(spring, nowMm, new Bend.Under(force)).deflection();
        return bend(spring, otherMm, new Bend.To(bent)).force() / force;
    }

    private static hornwright.engines.spring.SpringResult bend(Spring spring, double mm, Bend bend) {
        double cradle = spring.cradleArmMm() * MM;
        return hornwright.engines.spring.Spring.reckon(new SpringInput(
                new Section.Round(mm * MM),
                spring.modulusGPa() * 1e9,
                spring.lengthMm() * MM,
                bend,
                Model.LARGE,
                cradle,
                cradle,
                null));
    }

    /** The action with that spring so many times as strong. */
    static Action with(Action action, String key, double ratio) {
        double now = action.keywork().keys().get(key).spring().torqueNmm();
        return new SpringChange(key, now, ratio * now).in(action);
    }
}
