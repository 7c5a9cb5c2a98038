package hornwright.engines.linkage;

import hornwright.engines.linkage.Mechanism.Cup;
import hornwright.engines.linkage.Mechanism.Limits;
import hornwright.engines.linkage.Mechanism.Link;
import hornwright.engines.linkage.Mechanism.Sense;
import hornwright.engines.linkage.Mechanism.Spring;
import hornwright.engines.linkage.Mechanism.Stop;
import hornwright.engines.linkage.Mechanism.Towards;
import java.util.List;
import java.util.stream.IntStream;

/** A small stack: d closes f-sharp, f-sharp closes bis; every key springs open against a foot. */
final class Trio {
    static final List<Landing> SETS =
            List.of(new Landing(new Press("d", 1.6, 0.035), List.of("cup.d", "cup.f-sharp", "cup.bis")));

    /** Where the feet hold the keys, rad: followers a little lower than their drivers would let them. */
    static final double[] RESTS = {0.143, 0.118, 0.15};

    private Trio() {}

    private static Stop foot(String key, double rest) {
        return new Stop("foot." + key, key, 0.014, 2e-3 + 0.014 * rest, 2e-3, 2e5, Limits.OPENING);
    }

    static Mechanism of(double... offsets) {
        List<String> ids = List.of("d", "f-sharp", "bis");
        double[] arms = {0.034, 0.031, 0.02};
        return new Mechanism(
                ids.stream().map(id -> new Mechanism.Key(id, 0)).toList(),
                IntStream.range(0, 3)
                        .mapToObj(i -> new Cup("cup." + ids.get(i), ids.get(i), arms[i], 12e3, offsets[i]))
                        .toList(),
                IntStream.range(0, 3).mapToObj(i -> foot(ids.get(i), RESTS[i])).toList(),
                List.of(
                        link("d>f-sharp", "d", 0.014, "f-sharp", 0.0169),
                        link("f-sharp>bis", "f-sharp", 0.015, "bis", 0.0111)),
                ids.stream()
                        .map(id -> new Spring(id, 0.005, 0.005, Towards.OPEN))
                        .toList());
    }

    static Link link(String id, String driver, double driverArm, String follower, double followerArm) {
        return new Link(id, driver, driverArm, follower, followerArm, 0.9e-3, 0.8e-3, 6e5, Sense.CLOSES);
    }
}
