package hornwright.engines.linkage;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a first assembly comes to.
 *
 * @param allClosed share of draws in which every named cup closed
 * @param worstCup the cup open in most draws, null if none ever was
 * @param gapP95 95th percentile of a draw's largest named gap, m (negative: even that one is pressed in)
 * @param linkExact for each link of a set, what its own thickness being exact would bring; empty unless asked for
 */
public record Yield(double allClosed, @Nullable String worstCup, double gapP95, List<LinkExact> linkExact) {
    public Yield {
        linkExact = List.copyOf(linkExact);
    }

    /** The share all closed, and the mean of a draw's largest named gap (m), were the thickness of this one link exact. */
    public record LinkExact(String link, double allClosed, double meanGap) {}
}
