package hornwright.benchmarks;

import hornwright.engines.linkage.Mechanism;
import hornwright.engines.linkage.Press;
import java.util.List;

/**
 * The rest of a mechanism written down the plain way, to compare with: one dense matrix for all keys, Gauss elimination,
 * a step halved until the energy falls. No islands, no sparse pattern, no exact line search.
 */
final class PlainBalance {
    private final double[][] arms;
    private final double[] free;
    private final double[] stiffness;
    private final double[] rate;
    private final double[] torque;

    PlainBalance(Mechanism mechanism, List<Press> presses) {
        List<String> keys = mechanism.keys().stream().map(Mechanism.Key::id).toList();
        int rows = mechanism.cups().size()
                + mechanism.stops().size()
                + mechanism.links().size();
        arms = new double[rows][keys.size()];
        free = new double[rows];
        stiffness = new double[rows];
        rate = new double[keys.size()];
        torque = new double[keys.size()];
        int row = 0;
        for (Mechanism.Cup cup : mechanism.cups()) {
            int key = keys.indexOf(cup.key());
            double flex = mechanism.keys().get(key).flex();
            arms[row][key] = cup.arm();
            free[row] = cup.offset();
            stiffness[row++] = cup.stiffness() / (1 + cup.stiffness() * flex * cup.arm() * cup.arm());
        }
        for (Mechanism.Stop stop : mechanism.stops()) {
            arms[row][keys.indexOf(stop.key())] = stop.limits() == Mechanism.Limits.CLOSING ? stop.arm() : -stop.arm();
            free[row] = stop.clearance() - stop.thickness();
            stiffness[row++] = stop.stiffness();
        }
        for (Mechanism.Link link : mechanism.links()) {
            arms[row][keys.indexOf(link.driver())] = link.driverArm();
            arms[row][keys.indexOf(link.follower())] = -link.sense().sign() * link.followerArm();
            free[row] = link.space() - link.thickness();
            stiffness[row++] = link.stiffness();
        }
        for (Mechanism.Spring spring : mechanism.springs()) {
            int key = keys.indexOf(spring.key());
            rate[key] += spring.rate();
            torque[key] += spring.towards() == Mechanism.Towards.OPEN ? spring.torque() : -spring.torque();
        }
        presses.forEach(press -> torque[keys.indexOf(press.key())] -= press.force() * press.arm());
    }

    double[] rest() {
        double[] q = new double[rate.length];
        for (int step = 0; step < 1000; step++) {
            double[] slope = slope(q);
            double most = 0;
            for (double one : slope) {
                most = Math.max(most, Math.abs(one));
            }
            if (most < 1e-12) {
                break;
            }
            double[] d = solve(stiffness(q), slope);
            double before = energy(q);
            double share = 1;
            while (energy(moved(q, d, share)) > before && share > 1e-12) {
                share /= 2;
            }
            q = moved(q, d, share);
        }
        return q;
    }

    private static double[] moved(double[] q, double[] d, double share) {
        double[] moved = q.clone();
        for (int i = 0; i < q.length; i++) {
            moved[i] -= share * d[i];
        }
        return moved;
    }

    private double gap(int row, double[] q) {
        double gap = free[row];
        for (int i = 0; i < q.length; i++) {
            gap += arms[row][i] * q[i];
        }
        return gap;
    }

    private double energy(double[] q) {
        double energy = 0;
        for (int i = 0; i < q.length; i++) {
            energy += rate[i] * q[i] * q[i] / 2 - torque[i] * q[i];
        }
        for (int row = 0; row < free.length; row++) {
            double pressed = Math.min(0, gap(row, q));
            energy += stiffness[row] * pressed * pressed / 2;
        }
        return energy;
    }

    private double[] slope(double[] q) {
        double[] slope = new double[q.length];
        for (int i = 0; i < q.length; i++) {
            slope[i] = rate[i] * q[i] - torque[i];
        }
        for (int row = 0; row < free.length; row++) {
            double force = stiffness[row] * Math.min(0, gap(row, q));
            for (int i = 0; i < q.length; i++) {
                slope[i] += force * arms[row][i];
            }
        }
        return slope;
    }

    private double[][] stiffness(double[] q) {
        double[][] m = new double[q.length][q.length];
        for (int i = 0; i < q.length; i++) {
            m[i][i] = rate[i];
        }
        for (int row = 0; row < free.length; row++) {
            if (gap(row, q) < 0) {
                for (int i = 0; i < q.length; i++) {
                    for (int j = 0; j < q.length; j++) {
                        m[i][j] += stiffness[row] * arms[row][i] * arms[row][j];
                    }
                }
            }
        }
        return m;
    }

    private static double[] solve(double[][] m, double[] right) {
        int n = right.length;
        double[] x = right.clone();
        for (int c = 0; c < n; c++) {
            for (int r = c + 1; r < n; r++) {
                double share = m[r][c] / m[c][c];
                for (int k = c; k < n; k++) {
                    m[r][k] -= share * m[c][k];
                }
                x[r] -= share * x[c];
            }
        }
        for (int r = n - 1; r >= 0; r--) {
            for (int k = r + 1; k < n; k++) {
                x[r] -= m[r][k] * x[k];
            }
            x[r] /= m[r][r];
        }
        return x;
    }
}
