package hornwright.engines.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.linkage.Mechanism.Cup;
import hornwright.engines.linkage.Mechanism.Limits;
import hornwright.engines.linkage.Mechanism.Link;
import hornwright.engines.linkage.Mechanism.Sense;
import hornwright.engines.linkage.Mechanism.Spring;
import hornwright.engines.linkage.Mechanism.Stop;
import hornwright.engines.linkage.Mechanism.Towards;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LinkagePropertyTest {
    private static final int TRIALS = 300;

    private interface Claim {
        void holds(Mechanism mechanism, List<Press> press, Random random);
    }

    private static void forRandomMechanisms(int seed, Claim claim) {
        Random random = new Random(seed);
        for (int trial = 0; trial < TRIALS; trial++) {
            int keys = 2 + random.nextInt(25);
            Mechanism mechanism = RandomMechanism.of(random, keys, random.nextInt(2 * keys));
            claim.holds(mechanism, RandomMechanism.press(random, keys), random);
        }
    }

    private static double energy(Mechanism mechanism, List<Press> press, double[] q) {
        Contacts contacts = Contacts.of(mechanism);
        double[] torque = Balance.of(mechanism).torque(press);
        double energy = 0;
        for (int i = 0; i < q.length; i++) {
            energy -= torque[i] * q[i];
        }
        for (Spring spring : mechanism.springs()) {
            double at = q[mechanism.keyIndex().of(spring.key())];
            energy += spring.rate() * at * at / 2;
        }
        for (int row = 0; row < contacts.size(); row++) {
            double pressed = Math.min(0, contacts.stiffGap(row, q));
            energy += contacts.stiffness[row] * pressed * pressed / 2;
        }
        return energy;
    }

    @Test
    void no_other_place_has_less_energy() {
        forRandomMechanisms(1, (mechanism, press, random) -> {
            double[] rest = Balance.of(mechanism).under(press).rotation();
            double least = energy(mechanism, press, rest);
            for (int i = 0; i < 30; i++) {
                double[] other = rest.clone();
                double reach = Math.pow(10, -1 - 6 * random.nextDouble());
                for (int k = 0; k < other.length; k++) {
                    other[k] += reach * random.nextGaussian();
                }
                assertThat(energy(mechanism, press, other)).isGreaterThanOrEqualTo(least - 1e-15);
            }
        });
    }

    @Test
    void torques_on_every_key_add_up_to_nothing() {
        forRandomMechanisms(2, (mechanism, press, random) -> {
            Equilibrium at = Balance.of(mechanism).under(press);
            Index index = mechanism.keyIndex();
            double[] sum = new double[at.rotation().length];
            press.forEach(p -> sum[index.of(p.key())] -= p.force() * p.arm());
            for (Spring s : mechanism.springs()) {
                double q = at.rotation()[index.of(s.key())];
                sum[index.of(s.key())] +=
                        s.towards() == Towards.OPEN ? s.torque() - s.rate() * q : -s.torque() - s.rate() * q;
            }
            for (int i = 0; i < mechanism.cups().size(); i++) {
                Cup cup = mechanism.cups().get(i);
                sum[index.of(cup.key())] += at.cups().force()[i] * cup.arm();
            }
            for (int i = 0; i < mechanism.stops().size(); i++) {
                Stop stop = mechanism.stops().get(i);
                int way = stop.limits() == Limits.OPENING ? -1 : 1;
                sum[index.of(stop.key())] += way * at.stops().force()[i] * stop.arm();
            }
            for (int i = 0; i < mechanism.links().size(); i++) {
                Link link = mechanism.links().get(i);
                int way = link.sense() == Sense.CLOSES ? -1 : 1;
                sum[index.of(link.driver())] += at.links().force()[i] * link.driverArm();
                sum[index.of(link.follower())] += way * at.links().force()[i] * link.followerArm();
            }
            assertThat(sum).containsOnly(new double[sum.length], within(1e-12));
        });
    }

    @Test
    void a_contact_pushes_exactly_by_its_stiffness_and_only_where_it_is_pressed_in() {
        forRandomMechanisms(3, (mechanism, press, random) -> {
            Equilibrium at = Balance.of(mechanism).under(press);
            for (int i = 0; i < mechanism.cups().size(); i++) {
                Cup cup = mechanism.cups().get(i);
                double flex =
                        mechanism.keys().get(mechanism.keyIndex().of(cup.key())).flex();
                double q = at.rotation()[mechanism.keyIndex().of(cup.key())];
                double force = at.cups().force()[i];
                double gap = at.cups().gap()[i];
                assertThat(force).isCloseTo(cup.stiffness() * Math.max(0, -gap), within(1e-9));
                assertThat(gap).isCloseTo(cup.arm() * (q + flex * force * cup.arm()) + cup.offset(), within(1e-12));
            }
            for (int i = 0; i < mechanism.links().size(); i++) {
                double expected = mechanism.links().get(i).stiffness()
                        * Math.max(0, -at.links().gap()[i]);
                assertThat(at.links().force()[i]).isCloseTo(expected, within(1e-9));
            }
        });
    }

    @Test
    void lengths_in_other_units_give_the_same_angles() {
        forRandomMechanisms(4, (mechanism, press, random) -> {
            double unit = 1000;
            Mechanism inMillimetres = new Mechanism(
                    mechanism.keys().stream()
                            .map(k -> new Mechanism.Key(k.id(), k.flex() / unit))
                            .toList(),
                    mechanism.cups().stream()
                            .map(c -> new Cup(c.id(), c.key(), c.arm() * unit, c.stiffness() / unit, c.offset() * unit))
                            .toList(),
                    mechanism.stops().stream()
                            .map(s -> new Stop(
                                    s.id(),
                                    s.key(),
                                    s.arm() * unit,
                                    s.clearance() * unit,
                                    s.thickness() * unit,
                                    s.stiffness() / unit,
                                    s.limits()))
                            .toList(),
                    mechanism.links().stream()
                            .map(l -> new Link(
                                    l.id(),
                                    l.driver(),
                                    l.driverArm() * unit,
                                    l.follower(),
                                    l.followerArm() * unit,
                                    l.space() * unit,
                                    l.thickness() * unit,
                                    l.stiffness() / unit,
                                    l.sense()))
                            .toList(),
                    mechanism.springs().stream()
                            .map(s -> new Spring(s.key(), s.torque() * unit, s.rate() * unit, s.towards()))
                            .toList());
            List<Press> presses = press.stream()
                    .map(p -> new Press(p.key(), p.force(), p.arm() * unit))
                    .toList();
            assertThat(Balance.of(inMillimetres).under(presses).rotation())
                    .containsExactly(Balance.of(mechanism).under(press).rotation(), within(1e-11));
        });
    }

    /** Turning every sign round: opening stops become closing ones, pads become stops that end closing. */
    @Test
    void the_mirrored_mechanism_turns_the_other_way() {
        forRandomMechanisms(5, (mechanism, press, random) -> {
            List<Stop> stops = new ArrayList<>();
            List<Stop> mirrored = new ArrayList<>();
            for (Cup c : mechanism.cups()) {
                // a pad on a stiff shaft is a stop that ends closing, with its offset as clearance
                stops.add(new Stop(c.id(), c.key(), c.arm(), c.offset(), 0, c.stiffness(), Limits.CLOSING));
            }
            stops.addAll(mechanism.stops());
            for (Stop s : stops) {
                Limits other = s.limits() == Limits.OPENING ? Limits.CLOSING : Limits.OPENING;
                mirrored.add(new Stop(s.id(), s.key(), s.arm(), s.clearance(), s.thickness(), s.stiffness(), other));
            }
            List<Spring> turned = mechanism.springs().stream()
                    .map(s -> new Spring(
                            s.key(), s.torque(), s.rate(), s.towards() == Towards.OPEN ? Towards.CLOSED : Towards.OPEN))
                    .toList();
            List<Press> pulled = press.stream()
                    .map(p -> new Press(p.key(), p.force(), -p.arm()))
                    .toList();
            double[] rest = Balance.of(
                            new Mechanism(mechanism.keys(), List.of(), stops, List.of(), mechanism.springs()))
                    .under(press)
                    .rotation();
            double[] mirror = Balance.of(new Mechanism(mechanism.keys(), List.of(), mirrored, List.of(), turned))
                    .under(pulled)
                    .rotation();
            for (int i = 0; i < rest.length; i++) {
                assertThat(mirror[i]).isCloseTo(-rest[i], within(1e-12));
            }
        });
    }

    @Test
    void the_order_of_the_lists_does_not_matter() {
        forRandomMechanisms(6, (mechanism, press, random) -> {
            List<Mechanism.Key> keys = new ArrayList<>(mechanism.keys());
            List<Link> links = new ArrayList<>(mechanism.links());
            Collections.shuffle(keys, random);
            Collections.shuffle(links, random);
            Mechanism shuffled = new Mechanism(keys, mechanism.cups(), mechanism.stops(), links, mechanism.springs());
            double[] one = Balance.of(mechanism).under(press).rotation();
            double[] two = Balance.of(shuffled).under(press).rotation();
            for (int i = 0; i < keys.size(); i++) {
                assertThat(two[i])
                        .isCloseTo(one[mechanism.keyIndex().of(keys.get(i).id())], within(1e-11));
            }
        });
    }

    @Test
    void the_start_of_the_search_does_not_matter() {
        forRandomMechanisms(7, (mechanism, press, random) -> {
            Balance balance = Balance.of(mechanism);
            double[] rest = balance.under(press).rotation();
            double[] torque = balance.torque(press);
            double[] other = new double[rest.length];
            java.util.Arrays.setAll(other, i -> 0.2 * random.nextGaussian());
            mechanism.keys().stream()
                    .mapToInt(k -> balance.islandOf(k.id()))
                    .distinct()
                    .forEach(island -> balance.settle(island, torque, other));
            assertThat(other).containsExactly(rest, within(1e-10));
        });
    }

    @Test
    void slopes_are_those_of_a_small_difference() {
        forRandomMechanisms(8, (mechanism, press, random) -> {
            Balance balance = Balance.of(mechanism);
            Equilibrium at = balance.under(press);
            GapSlopes slopes = balance.slopes(at);
            for (int i = 0; i < mechanism.links().size(); i++) {
                Link link = mechanism.links().get(i);
                double step = 1e-9;
                Equilibrium moved = Balance.of(
                                mechanism.withLinkThicknesses(Map.of(link.id(), link.thickness() + step)))
                        .under(press);
                for (int c = 0; c < mechanism.cups().size(); c++) {
                    double difference = (moved.cups().gap()[c] - at.cups().gap()[c]) / step;
                    assertThat(slopes.cups()[i][c]).isCloseTo(difference, within(1e-4));
                }
                for (int l = 0; l < mechanism.links().size(); l++) {
                    double difference = (moved.links().gap()[l] - at.links().gap()[l]) / step;
                    assertThat(slopes.links()[i][l]).isCloseTo(difference, within(1e-4));
                }
            }
        });
    }
}
