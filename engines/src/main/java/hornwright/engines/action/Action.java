package hornwright.engines.action;

import hornwright.engines.action.ActionResult.Rebound;
import hornwright.engines.action.KeyMotion.End;
import hornwright.engines.action.Leg.State;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * One key let go: how soon it opens, how hard it lands, how high it bounces, when it is quiet.
 *
 * <p>J q″ = torque − rate q − friction − bumper. Between bumps in closed form, in bumps by steps of relative error 1e-11;
 * times and heights are good to about 1e-8 of themselves. Stiffness and restitution of real cork and felt are known to
 * tens of per cent, so trust the order of things more than their digits.
 */
public final class Action {
    private static final double SETTLED = 0.02;
    private static final double NOTED = 1e-5;
    private static final double FELT = 1e-4;
    private static final int MOST_IF_SWINGING = 100;

    private Action() {}

    public static ActionResult reckon(ActionInput key) {
        Slider slider = Slider.of(key);
        Told told = new Told(slider, key.cupArm() / key.stopArm());
        End end = KeyMotion.run(slider, told);
        boolean swings = end != End.RESTS;
        Double touchArm = key.touchArm();
        List<Rebound> rebounds = told.rebounds;
        State opened = told.opened;
        return new ActionResult(
                key.inertia(),
                opened == null ? null : Double.valueOf(opened.time()),
                opened == null ? null : Double.valueOf(opened.speed()),
                swings ? rebounds.subList(0, Math.min(MOST_IF_SWINGING, rebounds.size())) : rebounds,
                swings ? null : Double.valueOf(settled(key, slider, told)),
                touchArm == null ? null : Double.valueOf((key.torque() + key.friction()) / touchArm),
                !rebounds.isEmpty() && rebounds.getFirst().height() >= FELT);
    }

    private static double settled(ActionInput key, Slider slider, Told told) {
        double rest = slider.friction() == 0 ? slider.balance() : told.last.place();
        double away = SETTLED * key.travel() * key.stopArm() / key.cupArm();
        Outside outside = new Outside(rest - away, rest + away);
        KeyMotion.run(slider, outside);
        return outside.lastTime;
    }

    /** Touches and turning points as they come. */
    private static final class Told implements Consumer<Leg> {
        private final Slider slider;
        private final double cupPerStop;
        private final List<Rebound> rebounds = new ArrayList<>();
        private State last = new State(0, 0, 0);
        private @org.jspecify.annotations.Nullable State opened;
        private boolean away;

        Told(Slider slider, double cupPerStop) {
            this.slider = slider;
            this.cupPerStop = cupPerStop;
        }

        @Override
        public void accept(Leg leg) {
            last = leg.to();
            boolean back = leg.from().place() > last.place();
            if (opened == null && last.place() >= slider.touch()) {
                opened = last;
            }
            if (back && leg.from().place() == slider.touch()) {
                away = true;
            }
            if (away && back && last.speed() == 0) {
                away = false;
                double height = (slider.touch() - last.place()) * cupPerStop;
                if (height > NOTED) {
                    rebounds.add(new Rebound(height, last.time()));
                }
            }
        }
    }

    /** The last time the key is outside a band. */
    private static final class Outside implements Consumer<Leg> {
        private final double low;
        private final double high;
        private double lastTime;

        Outside(double low, double high) {
            this.low = low;
            this.high = high;
        }

        @Override
        public void accept(Leg leg) {
            double ends = leg.to().place();
            double starts = leg.from().place();
            if (ends < low || ends > high) {
                lastTime = leg.to().time();
            } else if (starts < low) {
                lastTime = leg.timeAt(low);
            } else if (starts > high) {
                lastTime = leg.timeAt(high);
            }
        }
    }
}
