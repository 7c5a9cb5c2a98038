package hornwright.bench.material;

import hornwright.engines.quantity.Outcome;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A key pressed shut and let go, its rebounds counted, and what that said of the material under its foot on that horn. The
 * motion needs the horn, so the figure is kept with the counts.
 *
 * @param key which key of which horn, in words
 * @param counts one for each time
 * @param value restitution the counts gave, {@code u} one standard uncertainty
 */
public record BounceTest(String material, String key, List<Integer> counts, double value, double u)
        implements BenchTest {
    public BounceTest {
        counts = List.copyOf(counts);
        if (counts.isEmpty() || !(value > 0) || !(u > 0)) {
            throw new IllegalArgumentException("counts, and a figure with its uncertainty above zero");
        }
    }

    @Override
    public Outcome<List<Fit>> fits(Materials materials) {
        return Outcome.of(List.of(new Fit(material, Property.RESTITUTION, value, u, inWords())), "bounces counted");
    }

    @Override
    public String inWords() {
        return "%s, %s let go: rebounds %s"
                .formatted(material, key, counts.stream().map(String::valueOf).collect(Collectors.joining(", ")));
    }
}
