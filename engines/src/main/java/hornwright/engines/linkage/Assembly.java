package hornwright.engines.linkage;

import hornwright.engines.linkage.Mechanism.Cup;
import hornwright.engines.linkage.Mechanism.Link;
import hornwright.engines.linkage.Mechanism.Stop;
import hornwright.engines.linkage.Yield.LinkExact;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * First assemblies drawn at random: how often do all named cups close at once? Each draw has a generator of its own, so
 * the answer depends on the seed only, not on how the draws are shared out.
 */
public final class Assembly {
    private static final int CHUNK = 256;

    private final Mechanism mechanism;
    private final Balance nominal;
    private final Spread spread;
    private final List<Pressed> sets;
    private final int[] islands;

    private Assembly(Mechanism mechanism, List<Landing> landings, Spread spread) {
        this.mechanism = mechanism;
        this.spread = spread;
        nominal = Balance.of(mechanism);
        sets = landings.stream()
                .map(landing -> Pressed.of(mechanism, nominal, landing))
                .toList();
        islands = sets.stream()
                .flatMapToInt(set -> Arrays.stream(set.islands))
                .distinct()
                .toArray();
    }

    /** Draws assemblies of this mechanism, which carries the thicknesses aimed at. */
    public static Yield yieldOf(Mechanism mechanism, List<Landing> landings, Spread spread) {
        return new Assembly(mechanism, landings, spread).drawn(-1).summary(List.of());
    }

    /** The same, and what each link of a set would bring if its thickness were exact, from the same draws. */
    public static Yield yieldByLink(Mechanism mechanism, List<Landing> landings, Spread spread) {
        Assembly assembly = new Assembly(mechanism, landings, spread);
        TreeSet<Integer> links = new TreeSet<>();
        landings.forEach(landing -> links.addAll(Thicknesses.chain(mechanism, landing)));
        List<LinkExact> each = new ArrayList<>();
        for (int link : links) {
            Drawn drawn = assembly.drawn(link);
            each.add(new LinkExact(mechanism.links().get(link).id(), drawn.allClosed(), drawn.meanGap()));
        }
        return assembly.drawn(-1).summary(each);
    }

    /** One set as the draws need it: torques, the islands that move, named cups, and where all stand without errors. */
    private record Pressed(int[] islands, int[] cups, double[] torque, double[] start) {

        static Pressed of(Mechanism mechanism, Balance balance, Landing landing) {
            int[] cups = landing.cups().stream()
                    .mapToInt(id -> mechanism.cupIndex().of(id))
                    .toArray();
            TreeSet<Integer> islands =
                    new TreeSet<>(List.of(balance.islandOf(landing.press().key())));
            for (int cup : cups) {
                islands.add(balance.islandOf(mechanism.cups().get(cup).key()));
            }
            List<Press> press = List.of(landing.press());
            return new Pressed(
                    islands.stream().mapToInt(Integer::intValue).toArray(),
                    cups,
                    balance.torque(press),
                    balance.under(press).rotation());
        }
    }

    /** Largest named gap of each draw, and in how many draws each cup stood open. */
    private record Drawn(double[] largest, int[] open, Assembly of) {

        double allClosed() {
            return Arrays.stream(largest)
                            .filter(gap -> gap <= of.spread.closed())
                            .count()
                    / (double) largest.length;
        }

        double meanGap() {
            return Arrays.stream(largest).average().orElse(0);
        }

        Yield summary(List<LinkExact> each) {
            double[] sorted = largest.clone();
            Arrays.sort(sorted);
            double place = 0.95 * (sorted.length - 1);
            int below = (int) place;
            int above = Math.min(below + 1, sorted.length - 1);
            double p95 = sorted[below] + (place - below) * (sorted[above] - sorted[below]);
            return new Yield(allClosed(), worst(), p95, each);
        }

        private @Nullable String worst() {
            int most = Arrays.stream(open).max().orElse(0);
            int cup = most == 0
                    ? -1
                    : IntStream.range(0, open.length)
                            .filter(i -> open[i] == most)
                            .findFirst()
                            .orElse(-1);
            return cup < 0 ? null : of.mechanism.cups().get(cup).id();
        }
    }

    private Drawn drawn(int exact) {
        double[] largest = new double[spread.draws()];
        int chunks = (spread.draws() + CHUNK - 1) / CHUNK;
        int[] open = IntStream.range(0, chunks)
                .parallel()
                .mapToObj(chunk -> chunk(chunk, exact, largest))
                .reduce(new int[mechanism.cups().size()], Assembly::sum);
        return new Drawn(largest, open, this);
    }

    private static int[] sum(int[] one, int[] two) {
        int[] sum = one.clone();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += two[i];
        }
        return sum;
    }

    private int[] chunk(int chunk, int exact, double[] largest) {
        Balance balance = nominal.copy();
        double[] rotation = new double[mechanism.keys().size()];
        int[] open = new int[mechanism.cups().size()];
        boolean[] stood = new boolean[open.length];
        int end = Math.min(spread.draws(), (chunk + 1) * CHUNK);
        for (int draw = chunk * CHUNK; draw < end; draw++) {
            assemble(balance.contacts(), draw, exact);
            for (int island : islands) {
                balance.reload(island);
            }
            Arrays.fill(stood, false);
            largest[draw] = largestGap(balance, rotation, stood);
            for (int cup = 0; cup < open.length; cup++) {
                open[cup] += stood[cup] ? 1 : 0;
            }
        }
        return open;
    }

    /** Each set starts where it stands without errors, moved by what this draw's errors did under the set before it. */
    private double largestGap(Balance balance, double[] rotation, boolean[] stood) {
        double largest = Double.NEGATIVE_INFINITY;
        double[] moved = new double[rotation.length];
        for (Pressed set : sets) {
            for (int key = 0; key < rotation.length; key++) {
                rotation[key] = set.start[key] + moved[key];
            }
            for (int island : set.islands) {
                balance.settle(island, set.torque, rotation);
            }
            for (int key = 0; key < rotation.length; key++) {
                moved[key] = rotation[key] - set.start[key];
            }
            for (int cup : set.cups) {
                double gap = balance.contacts().gap(cup, rotation);
                largest = Math.max(largest, gap);
                stood[cup] |= gap > spread.closed();
            }
        }
        return largest;
    }

    /** Errors in the order links, stops, cups; a link named exact keeps its thickness and draws nothing less. */
    private void assemble(Contacts contacts, int draw, int exact) {
        SplittableRandom random = new SplittableRandom(scrambled(spread.seed(), draw));
        for (int i = 0; i < mechanism.links().size(); i++) {
            Link link = mechanism.links().get(i);
            double error = spread.thickness() * random.nextGaussian();
            double driver = link.driverArm() + spread.arm() * random.nextGaussian();
            double follower = link.followerArm() + spread.arm() * random.nextGaussian();
            contacts.link(i, link.space() - link.thickness() - (i == exact ? 0 : error), driver, follower);
        }
        for (int i = 0; i < mechanism.stops().size(); i++) {
            Stop stop = mechanism.stops().get(i);
            contacts.stop(i, stop.clearance() - stop.thickness() - spread.thickness() * random.nextGaussian());
        }
        for (int i = 0; i < mechanism.cups().size(); i++) {
            Cup cup = mechanism.cups().get(i);
            double arm = cup.arm() + spread.arm() * random.nextGaussian();
            contacts.cup(i, arm, cup.offset() + spread.offset() * random.nextGaussian());
        }
    }

    /** Spreads neighbouring draws over all seeds (the finaliser of a 64-bit hash). */
    private static long scrambled(long seed, int draw) {
        long mixed = seed * 0xD1342543DE82EF95L + draw;
        mixed = (mixed ^ (mixed >>> 33)) * 0xFF51AFD7ED558CCDL;
        mixed = (mixed ^ (mixed >>> 33)) * 0xC4CEB9FE1A85EC53L;
        return mixed ^ (mixed >>> 33);
    }
}
