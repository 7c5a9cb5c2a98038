package hornwright.engines.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.linkage.Mechanism.Spring;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The same rests by two other roads: the contact forces as a complementarity problem solved by trying every basis, and
 * plain projected Gauss-Seidel on the forces, one contact at a time.
 */
class LinkageSecondMethodTest {

    /** Forces f ≥ 0 with w = (A R⁻¹ Aᵀ + K⁻¹) f + gap(R⁻¹ torque) ≥ 0: the dual of the least energy. */
    private record Dual(double[][] m, double[] q, double[][] arms, double[] freeRotation, double[] rate) {

        static Dual of(Mechanism mechanism, List<Press> presses) {
            Contacts contacts = Contacts.of(mechanism);
            int keys = mechanism.keys().size();
            double[] rate = new double[keys];
            double[] torque = Balance.of(mechanism).torque(presses);
            mechanism.springs().forEach(s -> rate[mechanism.keyIndex().of(s.key())] += s.rate());
            double[][] arms = new double[contacts.size()][keys];
            double[] free = new double[keys];
            for (int i = 0; i < keys; i++) {
                free[i] = torque[i] / rate[i];
            }
            double[][] m = new double[contacts.size()][contacts.size()];
            double[] q = new double[contacts.size()];
            for (int r = 0; r < contacts.size(); r++) {
                arms[r][contacts.key1[r]] = contacts.arm1[r];
                if (contacts.key2[r] >= 0) {
                    arms[r][contacts.key2[r]] = contacts.arm2[r];
                }
                q[r] = contacts.stiffGap(r, free);
            }
            for (int r = 0; r < contacts.size(); r++) {
                for (int s = 0; s < contacts.size(); s++) {
                    for (int i = 0; i < keys; i++) {
                        m[r][s] += arms[r][i] * arms[s][i] / rate[i];
                    }
                }
                m[r][r] += 1 / contacts.stiffness[r];
            }
            return new Dual(m, q, arms, free, rate);
        }

        double[] rotation(double[] force) {
            double[] rotation = freeRotation.clone();
            for (int r = 0; r < force.length; r++) {
                for (int i = 0; i < rotation.length; i++) {
                    rotation[i] += arms[r][i] * force[r] / rate[i];
                }
            }
            return rotation;
        }

        double[] gaussSeidel() {
            double[] force = new double[q.length];
            for (int sweep = 0; sweep < 200_000; sweep++) {
                double most = 0;
                for (int r = 0; r < q.length; r++) {
                    double w = q[r];
                    for (int s = 0; s < q.length; s++) {
                        w += m[r][s] * force[s];
                    }
                    double next = Math.max(0, force[r] - w / m[r][r]);
                    most = Math.max(most, Math.abs(next - force[r]));
                    force[r] = next;
                }
                if (most < 1e-14) {
                    break;
                }
            }
            return force;
        }
    }

    @Test
    void trying_every_set_of_bearing_contacts_finds_the_same_forces() {
        Random random = new Random(31);
        int bearing = 0;
        for (int trial = 0; trial < 300; trial++) {
            int keys = 2 + random.nextInt(2);
            Mechanism mechanism = RandomMechanism.of(random, keys, 1 + random.nextInt(3));
            List<Press> press = RandomMechanism.press(random, keys);
            Dual dual = Dual.of(mechanism, press);
            List<double[]> solutions = EveryBasis.solutions(dual.m(), dual.q());
            assertThat(solutions).hasSize(1);
            Equilibrium rest = Balance.of(mechanism).under(press);
            double[] force = solutions.getFirst();
            int row = 0;
            for (double[] side : List.of(
                    rest.cups().force(), rest.stops().force(), rest.links().force())) {
                for (double one : side) {
                    assertThat(one).isCloseTo(force[row], within(1e-8 * (1 + force[row])));
                    bearing += one > 0 ? 1 : 0;
                    row++;
                }
            }
            assertThat(rest.rotation()).containsExactly(dual.rotation(force), within(1e-8));
        }
        assertThat(bearing).as("contacts that bore in all trials").isGreaterThan(500);
    }

    /** Relaxation creeps where contacts are far stiffer than springs; stronger springs let it arrive. */
    private static Mechanism stronglySprung(Mechanism mechanism) {
        List<Spring> springs = mechanism.springs().stream()
                .map(s -> new Spring(s.key(), 3 * s.torque(), 30 * s.rate(), s.towards()))
                .toList();
        return new Mechanism(mechanism.keys(), mechanism.cups(), mechanism.stops(), mechanism.links(), springs);
    }

    @Test
    void contact_by_contact_relaxation_ends_at_the_same_rest() {
        Random random = new Random(32);
        for (int trial = 0; trial < 30; trial++) {
            Mechanism mechanism = stronglySprung(RandomMechanism.of(random, 8, 6));
            List<Press> press = RandomMechanism.press(random, 8);
            Dual dual = Dual.of(mechanism, press);
            assertThat(Balance.of(mechanism).under(press).rotation())
                    .containsExactly(dual.rotation(dual.gaussSeidel()), within(1e-6));
        }
    }
}
