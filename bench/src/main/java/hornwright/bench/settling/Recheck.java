package hornwright.bench.settling;

import hornwright.bench.rules.Rule;
import hornwright.bench.rules.ShopRules;
import java.time.LocalDate;

/**
 * What to expect at the second look.
 *
 * @param on the day
 * @param byThenMm change since the material was laid, mm
 * @param u one standard uncertainty, of the material and of the pace together, mm
 * @param inTheEndMm change once all has packed, mm
 */
public record Recheck(LocalDate on, double byThenMm, double u, double inTheEndMm) {

    /**
     * @param settling of the contact
     * @param ratio movement at the place that is looked at, for each millimetre lost in the contact
     */
    public static Recheck of(Settling settling, double ratio, LocalDate laid, ShopRules rules) {
        int days = (int) Math.round(rules.value("settling.recheck_d"));
        Rule pace = rules.get("settling.days_d");
        double done = done(days, pace.value());
        double slower = done(days, pace.value() + pace.u());
        double end = ratio * settling.lossMm();
        double u = Math.hypot(ratio * settling.u() * done, end * (done - slower));
        return new Recheck(day(laid, rules), end * done, u, end);
    }

    /** The day to look again at what was laid on that day. */
    public static LocalDate day(LocalDate laid, ShopRules rules) {
        return laid.plusDays(Math.round(rules.value("settling.recheck_d")));
    }

    /** Share that is over after so many days: fast at first, then ever slower. */
    public static double done(double days, double pace) {
        return 1 - Math.exp(-days / pace);
    }
}
