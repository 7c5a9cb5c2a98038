package hornwright.engines.action;

import hornwright.engines.action.Leg.Flight;
import hornwright.engines.action.Leg.Pressed;
import hornwright.engines.action.Leg.State;
import java.util.function.Consumer;

/**
 * The key from release until it rests: flights in closed form, bumps step by step, turned round at every standstill, where
 * it stays if friction can hold it.
 */
final class KeyMotion {
    /** How the motion ends. */
    enum End {
        RESTS,
        SWINGS_FOR_EVER,
        /** Figures so far from a key's that steps or numbers run out. */
        LOST
    }

    private static final double RESTING_SHARE = 1e-8;
    private static final double CREEP = 1e-6;
    private static final double HELD = 1 + 1e-12;
    private static final double TOLERANCE = 1e-11;

    /** A small part of the time a bump takes; the error control finds the rest. */
    private static final double FIRST_STEP = 1e-3;

    private static final int MOST_TOUCHES = 20_000;
    private static final int MOST_STEPS = 1_000_000;

    private final Slider slider;
    private final Consumer<Leg> watcher;
    private final boolean everlasting;
    private final double enough;
    private State state;
    private double touchSpeed;
    private int touches;
    private int steps;

    private KeyMotion(Slider slider, State start, Consumer<Leg> watcher) {
        this.slider = slider;
        this.state = start;
        this.watcher = watcher;
        this.touchSpeed = Math.abs(start.speed());
        double lowest = slider.energy(slider.balance(), 0);
        enough = lowest + RESTING_SHARE * (slider.energy(0, 0) - lowest);
        everlasting = slider.friction() == 0 && !(slider.push() > slider.rate() * slider.touch());
    }

    /** Lets it go closed and at rest, and shows every leg in order. */
    static End run(Slider slider, Consumer<Leg> watcher) {
        return run(slider, new State(0, 0, 0), watcher);
    }

    static End run(Slider slider, State start, Consumer<Leg> watcher) {
        return new KeyMotion(slider, start, watcher).run();
    }

    private End run() {
        while (touches < MOST_TOUCHES) {
            int direction = direction();
            if (direction == 0 || spent()) {
                return End.RESTS;
            }
            if (state.place() < slider.touch() || (state.place() == slider.touch() && direction < 0)) {
                fly(direction);
            } else if (!press(direction)) {
                return End.LOST;
            }
            if (everlasting && ((touches == 0 && direction < 0) || touches > 100)) {
                return End.SWINGS_FOR_EVER;
            }
        }
        return End.SWINGS_FOR_EVER;
    }

    /**
     * Whether what is left of the motion cannot be seen: hardly any energy, or, since a strongly damped bumper creeps
     * toward where friction holds it without ever turning, hardly any speed and nothing left to drive it.
     */
    private boolean spent() {
        if (everlasting) {
            return false;
        }
        double drive = Math.abs(slider.pull(state.place())) - slider.friction();
        boolean creeps = Math.abs(state.speed()) < CREEP * touchSpeed && drive < CREEP * slider.push();
        return (creeps && touches > 0) || slider.energy(state.place(), state.speed()) <= enough;
    }

    /** Where it goes next; 0 if it stays. */
    private int direction() {
        if (state.speed() != 0) {
            return state.speed() > 0 ? 1 : -1;
        }
        double pull = slider.pull(state.place());
        return Math.abs(pull) <= HELD * slider.friction() ? 0 : (int) Math.signum(pull);
    }

    private void fly(int direction) {
        Flight flight = Flight.of(slider, direction, state);
        watcher.accept(flight);
        state = flight.to();
        if (state.place() == slider.touch() && direction > 0) {
            touches++;
            touchSpeed = Math.max(touchSpeed, state.speed());
        }
    }

    /** Against the bumper until it turns or leaves; false if it gets nowhere. */
    private boolean press(int direction) {
        Stepper stepper = new Stepper(slider, direction);
        double deep = slider.bumper().deepest(slider.mass(), touchSpeed);
        double step = FIRST_STEP * deep / touchSpeed;
        while (state.time() + step > state.time() && steps++ < MOST_STEPS) {
            State next = stepper.step(state, step);
            double error = stepper.error(step, TOLERANCE * deep, TOLERANCE * touchSpeed);
            double factor = Math.min(4, Math.max(0.2, 0.9 * Math.pow(error, -0.2)));
            boolean turnedAtOnce = state.speed() == 0 && next.speed() * direction <= 0;
            if (!(error <= 1) || turnedAtOnce) {
                step *= error > 1 ? Math.min(0.5, factor) : 0.1;
                continue;
            }
            State kept = ended(stepper, step, next, direction);
            watcher.accept(new Pressed(stepper, state, kept));
            state = kept;
            if (kept.speed() == 0 || kept.place() == slider.touch() || spent()) {
                return true;
            }
            step *= factor;
        }
        return false;
    }

    /** The step cut where the key turns or leaves, if it does. */
    private State ended(Stepper stepper, double step, State next, int direction) {
        double turn = next.speed() * direction <= 0
                ? stepper.until(state, step, s -> s.speed() * direction)
                : Double.POSITIVE_INFINITY;
        double leave = direction < 0 && next.place() <= slider.touch()
                ? stepper.until(state, step, s -> s.place() - slider.touch())
                : Double.POSITIVE_INFINITY;
        if (turn == Double.POSITIVE_INFINITY && leave == Double.POSITIVE_INFINITY) {
            return next;
        }
        State last = stepper.step(state, Math.min(turn, leave));
        return turn <= leave
                ? new State(last.time(), last.place(), 0)
                : new State(last.time(), slider.touch(), last.speed());
    }
}
