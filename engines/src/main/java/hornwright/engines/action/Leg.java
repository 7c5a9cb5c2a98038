package hornwright.engines.action;

/** A stretch of motion in one direction, from one time, place and speed to another. */
sealed interface Leg {

    /** Time (s), place (m) and speed (m/s). */
    record State(double time, double place, double speed) {}

    State from();

    State to();

    /** When the key passes a place between the ends. */
    double timeAt(double place);

    /** Without the bumper: an arc of a harmonic motion, or a parabola, in closed form. */
    record Flight(Slider slider, int direction, State from, State to) implements Leg {

        /** The flight from a state until it turns or touches the stop. */
        static Flight of(Slider slider, int direction, State from) {
            double turning = from.place() + direction * reach(slider, direction, from);
            double ends = direction > 0 ? Math.min(turning, slider.touch()) : turning;
            boolean turns = ends == turning;
            double speed = turns ? 0 : direction * speedAt(slider, direction, from, ends);
            double took = time(slider, direction, from, ends, speed);
            return new Flight(slider, direction, from, new State(from.time() + took, ends, speed));
        }

        @Override
        public double timeAt(double place) {
            double speed = direction * speedAt(slider, direction, from, place);
            return from.time() + time(slider, direction, from, place, speed);
        }

        /** How far it gets before it turns. The force falls evenly with the way, so work is a parabola in it. */
        private static double reach(Slider slider, int direction, State from) {
            double forward = direction * slider.acceleration(from.place(), 0, direction);
            double square = slider.rate() / slider.mass();
            double root = Math.sqrt(forward * forward + square * from.speed() * from.speed());
            return forward >= 0 ? (forward + root) / square : from.speed() * from.speed() / (root - forward);
        }

        private static double speedAt(Slider slider, int direction, State from, double place) {
            double way = place - from.place();
            double there = slider.acceleration(from.place(), 0, direction);
            double mean = there - slider.rate() / slider.mass() * way / 2;
            return Math.sqrt(Math.max(0, from.speed() * from.speed() + 2 * mean * way));
        }

        /** Speed and acceleration/ω turn like the hands of a clock; the angle between two states is ω times the time. */
        private static double time(Slider slider, int direction, State from, double place, double speed) {
            double square = slider.rate() / slider.mass();
            double before = slider.acceleration(from.place(), 0, direction);
            double after = before - square * (place - from.place());
            if (square == 0) {
                double mean = (from.speed() + speed) / 2;
                return mean == 0 ? 0 : (place - from.place()) / mean;
            }
            double omega = Math.sqrt(square);
            double angle = Math.atan2(
                    omega * (before * speed - from.speed() * after), before * after + square * from.speed() * speed);
            if (angle < -Math.PI / 2) {
                angle += 2 * Math.PI;
            }
            return Math.max(0, angle) / omega;
        }
    }

    /** One step of the integrator against the bumper. */
    record Pressed(Stepper stepper, State from, State to) implements Leg {
        @Override
        public double timeAt(double place) {
            double step = to.time() - from.time();
            return from.time() + stepper.until(from, step, s -> s.place() - place);
        }
    }
}
