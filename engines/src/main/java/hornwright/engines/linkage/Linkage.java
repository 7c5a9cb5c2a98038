package hornwright.engines.linkage;

import hornwright.engines.linkage.Mechanism.Link;
import java.util.List;

/**
 * Front door: where coupled keys come to rest, what makes their pads land together, and how surely.
 *
 * <p>Contacts push but do not pull; angles are small; rest is the least of a convex energy and is found exactly but for
 * rounding (about 1e-12 of the largest torque). The model is the error that counts: straight stiffnesses, no friction,
 * no play.
 */
public final class Linkage {
    /** The thickness a sensitivity adds, m. */
    private static final double STEP = 1e-4;

    private Linkage() {}

    /**
     * Answers everything at once; units in {@link LinkageResult}.
     *
     * @throws UnbalancedLoad if no spring and no contact takes up a load
     */
    public static LinkageResult reckon(LinkageInput input) {
        Mechanism mechanism = input.mechanism();
        Balance balance = Balance.of(mechanism);
        Equilibrium free = balance.atRest();
        Equilibrium pressed = balance.under(input.presses());
        Thicknesses thicknesses = Thicknesses.of(mechanism, input.landings());
        Spread spread = input.spread();
        Yield yield = spread == null || input.landings().isEmpty()
                ? null
                : Assembly.yieldOf(thicknesses.in(mechanism), input.landings(), spread);
        return new LinkageResult(
                pressed,
                free,
                thicknesses,
                sensitivity(mechanism, input.presses(), pressed),
                BenchOrder.of(mechanism.links()),
                yield);
    }

    private static double[][] sensitivity(Mechanism mechanism, List<Press> presses, Equilibrium pressed) {
        Balance varied = Balance.of(mechanism);
        Contacts contacts = varied.contacts();
        double[] torque = varied.torque(presses);
        double[][] change = new double[contacts.links][contacts.cups];
        for (int i = 0; i < contacts.links; i++) {
            Link link = mechanism.links().get(i);
            int island = varied.islandOf(link.driver());
            double clear = link.space() - link.thickness();
            contacts.link(i, clear - STEP, link.driverArm(), link.followerArm());
            varied.reload(island);
            double[] rotation = pressed.rotation().clone();
            varied.settle(island, torque, rotation);
            for (int cup = 0; cup < contacts.cups; cup++) {
                change[i][cup] = contacts.gap(cup, rotation) - pressed.cups().gap()[cup];
            }
            contacts.link(i, clear, link.driverArm(), link.followerArm());
            varied.reload(island);
        }
        return change;
    }
}
