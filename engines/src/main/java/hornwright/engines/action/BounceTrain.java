package hornwright.engines.action;

/**
 * A ball's bounces under constant acceleration with one restitution for all speeds: the back-of-envelope answer, and the
 * one a bench test by counting is read with.
 *
 * @param height it falls from, m
 * @param acceleration m/s²
 * @param restitution share of the speed given back
 */
public record BounceTrain(double height, double acceleration, double restitution) {
    public BounceTrain {
        if (!(height > 0) || !(acceleration > 0) || !(restitution >= 0 && restitution < 1)) {
            throw new IllegalArgumentException("it falls from a height and gives back less than it got");
        }
    }

    /** Time to the first touch, s. */
    public double firstTouch() {
        return Math.sqrt(2 * height / acceleration);
    }

    /** Height of the rebound with this number, 1 for the first, m. */
    public double rebound(int number) {
        return height * Math.pow(restitution, 2.0 * number);
    }

    /** Time until the last bounce is over, s. */
    public double duration() {
        return firstTouch() * (1 + restitution) / (1 - restitution);
    }

    /** Way travelled up and down, m. */
    public double path() {
        double square = restitution * restitution;
        return height * (1 + square) / (1 - square);
    }

    /** How many rebounds reach this height (m) or more. */
    public int count(double least) {
        if (restitution == 0) {
            return 0;
        }
        return (int) Math.max(0, Math.floor(Math.log(least / height) / (2 * Math.log(restitution)) + 1e-12));
    }
}
