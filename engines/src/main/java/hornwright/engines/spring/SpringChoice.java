package hornwright.engines.spring;

import hornwright.engines.spring.SpringInput.Bend;
import hornwright.engines.spring.SpringInput.Model;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The stocked size that comes nearest to a wanted touch force, with its neighbours, because the hand often wants one size
 * up or down.
 *
 * @param down the next weaker size, if there is one
 * @param best nearest in ratio
 * @param up the next stronger size, if there is one
 */
public record SpringChoice(
        @Nullable Sized down, Sized best, @Nullable Sized up) {

    /**
     * What the key needs.
     *
     * @param touchForce wanted at the touch, N
     * @param touchArm key axis to touch, m
     * @param cradleArm key axis to cradle, m
     * @param length free length of the spring, m
     * @param deflection at the cradle when the finger meets the key, m
     */
    public record Wanted(double touchForce, double touchArm, double cradleArm, double length, double deflection) {
        public Wanted {
            if (!(touchForce > 0) || !(touchArm > 0)) {
                throw new IllegalArgumentException("touch force and touch arm are above zero");
            }
        }
    }

    /** Sizes of one metal: modulus and tensile strength in Pa. */
    public record Stock(
            List<Section> sizes, double modulus, @Nullable Double strength) {
        public Stock {
            sizes = List.copyOf(sizes);
            if (sizes.isEmpty()) {
                throw new IllegalArgumentException("there is no size to choose from");
            }
        }
    }

    /** One size in this key: force at the touch (N), the same as a share of the wanted one, and its stress share. */
    public record Sized(
            Section section,
            double touchForce,
            double shareOfWanted,
            @Nullable Double stressShare) {}

    public static SpringChoice of(Wanted wanted, Stock stock) {
        List<Sized> sizes = stock.sizes().stream()
                .map(section -> sized(section, wanted, stock))
                .sorted(Comparator.comparingDouble(Sized::touchForce))
                .toList();
        int best = 0;
        for (int i = 1; i < sizes.size(); i++) {
            if (off(sizes.get(i)) < off(sizes.get(best))) {
                best = i;
            }
        }
        Sized down = best > 0 ? sizes.get(best - 1) : null;
        Sized up = best + 1 < sizes.size() ? sizes.get(best + 1) : null;
        return new SpringChoice(down, sizes.get(best), up);
    }

    private static double off(Sized size) {
        return Math.abs(Math.log(size.shareOfWanted()));
    }

    private static Sized sized(Section section, Wanted wanted, Stock stock) {
        SpringResult bent = Spring.reckon(new SpringInput(
                section,
                stock.modulus(),
                wanted.length(),
                new Bend.To(wanted.deflection()),
                Model.LARGE,
                wanted.cradleArm(),
                wanted.touchArm(),
                stock.strength()));
        double touch = bent.torque() / wanted.touchArm();
        return new Sized(section, touch, touch / wanted.touchForce(), bent.stressShare());
    }
}
