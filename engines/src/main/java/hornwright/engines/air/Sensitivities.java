package hornwright.engines.air;

import hornwright.engines.air.AirInput.Fingering;
import hornwright.engines.air.AirResult.Sensitivity;
import java.util.ArrayList;
import java.util.List;

/**
 * How a resonance moves when a pad is raised. At a resonance d|Y|²/df = 0, so df/dh is minus the mixed derivative over the
 * second one; both are read from three frequencies close together.
 */
final class Sensitivities {
    private static final double APART = 1e-4;
    private static final double CENTS = 1200 / Math.log(2);

    private Sensitivities() {}

    static List<Sensitivity> of(AirInput input, Fingering fingering, Response response, double peak) {
        double apart = peak * APART;
        double below = peak - apart;
        double above = peak + apart;
        Complex y = response.admittance(peak);
        Complex yBelow = response.admittance(below);
        Complex yAbove = response.admittance(above);
        Complex[] slopeBelow = response.slopes(below);
        Complex[] slopeAbove = response.slopes(above);
        double bend = (yAbove.squared() - 2 * y.squared() + yBelow.squared()) / (apart * apart);
        List<Sensitivity> all = new ArrayList<>();
        for (int i = 0; i < fingering.open().size(); i++) {
            int hole = fingering.open().get(i);
            if (input.holes().get(hole).pad() != null) {
                double mixed = (growth(yAbove, slopeAbove[i]) - growth(yBelow, slopeBelow[i])) / (2 * apart);
                all.add(new Sensitivity(hole, -mixed / bend * CENTS / peak));
            }
        }
        return all;
    }

    /** Change of |Y|². */
    private static double growth(Complex y, Complex change) {
        return 2 * (y.re() * change.re() + y.im() * change.im());
    }
}
