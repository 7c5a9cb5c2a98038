package hornwright.engines.seat;

/** A loose disc pressed through its centre: sinks and tilts until its moments vanish. */
record FreePad(Ring rim, PadStiffness pad, double radius) {

    /** Sinking, front and side rise at the rim, all m. */
    record Rest(double descent, double front, double side) {}

    static FreePad of(SeatInput input) {
        return new FreePad(Ring.of(input.rim(), input.face()), input.pad(), input.radius());
    }

    Ring placed(Rest rest) {
        return rim.moved(rest.descent(), rest.front(), rest.side());
    }

    /** Minimises pad energy less the work of the force: convex, so Newton with a line search finds the one minimum. */
    Rest resting(double force) {
        if (force == 0) {
            return new Rest(-rim.highest().height(), 0, 0);
        }
        Rest rest = allRound(force);
        Push push = Push.of(placed(rest), pad, radius);
        for (int i = 0; i < 200; i++) {
            double[] pull = {force - push.load[0], -push.load[1], -push.load[2]};
            double size = norm(pull);
            if (size < 1e-13 * force) {
                break;
            }
            double[] step = solve(push.stiffness, pull);
            double gain = step[0] * pull[0] + step[1] * pull[1] + step[2] * pull[2];
            double energy = push.energy - force * rest.descent();
            double share = 1;
            Rest tried = rest;
            Push there = push;
            for (int halving = 0; halving < 50; halving++, share /= 2) {
                tried = new Rest(
                        rest.descent() + share * step[0],
                        rest.front() + share * step[1],
                        rest.side() + share * step[2]);
                there = Push.of(placed(tried), pad, radius);
                double after = there.energy - force * tried.descent();
                double left = norm(new double[] {force - there.load[0], there.load[1], there.load[2]});
                if (after <= energy - 1e-4 * share * gain || left < size / 2) {
                    break;
                }
            }
            if (tried.equals(rest)) {
                break;
            }
            rest = tried;
            push = there;
        }
        return rest;
    }

    /** Least force that leaves no gap. */
    double sealing() {
        double deepest = -placed(allRound(0)).lowest().height();
        if (deepest < Ring.EQUAL) {
            return 0;
        }
        double even = 2 * Math.PI * radius * pad.skin() * deepest;
        if (pad.isEven()) {
            return even;
        }
        double low = 0;
        double high = even;
        while (lowestUnder(high) < 0) {
            low = high;
            high *= 2;
        }
        for (int halving = 0; halving < 42; halving++) {
            double middle = (low + high) / 2;
            if (lowestUnder(middle) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private double lowestUnder(double force) {
        return placed(resting(force)).lowest().height();
    }

    /** Rest of a disc whose springs could also pull: it follows mean and first harmonic of the rim exactly. */
    private Rest allRound(double force) {
        double[] sums = new double[3];
        rim.integrate(new double[0], (angle, weight, height) -> {
            sums[0] += weight * height;
            sums[1] += weight * height * Math.cos(angle);
            sums[2] += weight * height * Math.sin(angle);
        });
        double sunk = force / (2 * Math.PI * radius * pad.skin());
        return new Rest(sunk - sums[0] / (2 * Math.PI), -sums[1] / Math.PI, -sums[2] / Math.PI);
    }

    private static double norm(double[] v) {
        return Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
    }

    /** Cholesky of a symmetric positive 3 by 3, with a trace of stiffness added where a short contact hides one. */
    private static double[] solve(double[][] a, double[] b) {
        double ridge = 1e-13 * (a[0][0] + a[1][1] + a[2][2]);
        double l00 = Math.sqrt(a[0][0] + ridge);
        double l10 = a[1][0] / l00;
        double l20 = a[2][0] / l00;
        double l11 = Math.sqrt(Math.max(a[1][1] + ridge - l10 * l10, ridge));
        double l21 = (a[2][1] - l20 * l10) / l11;
        double l22 = Math.sqrt(Math.max(a[2][2] + ridge - l20 * l20 - l21 * l21, ridge));
        double y0 = b[0] / l00;
        double y1 = (b[1] - l10 * y0) / l11;
        double y2 = (b[2] - l20 * y0 - l21 * y1) / l22;
        double x2 = y2 / l22;
        double x1 = (y1 - l21 * x2) / l11;
        return new double[] {(y0 - l10 * x1 - l20 * x2) / l00, x1, x2};
    }
}
