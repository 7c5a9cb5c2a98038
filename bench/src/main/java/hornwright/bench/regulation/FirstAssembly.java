package hornwright.bench.regulation;

import hornwright.bench.action.Action;
import hornwright.bench.rules.ShopRules;
import hornwright.engines.linkage.Assembly;
import hornwright.engines.linkage.Landing;
import hornwright.engines.linkage.Mechanism;
import hornwright.engines.linkage.Spread;
import hornwright.engines.linkage.Thicknesses;
import hornwright.engines.linkage.Yield;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How often corks cut to plan close everything at first assembly, and which contacts, cut exactly, would help most.
 *
 * @param allClosed share of assemblies in which every cup of every set closes
 * @param worstCup the cup open most often, null if none ever is
 * @param gapP95Mm 95th percentile of the largest gap of an assembly
 * @param mostWorth the three contacts whose exactness would raise the share most, best first; where shares are equal, as
 *     they are when hardly any assembly closes, those that would bring the gaps down most
 */
public record FirstAssembly(double allClosed, @Nullable String worstCup, double gapP95Mm, List<Gain> mostWorth) {
    /** First assemblies drawn. */
    public static final int DRAWS = 1000;

    private static final int TOLD = 3;
    private static final double METRES = 1e-3;

    public FirstAssembly {
        mostWorth = List.copyOf(mostWorth);
    }

    /** A contact, the share all closed if it alone were exact, and the mean largest gap then. */
    public record Gain(String link, double allClosed, double meanGapMm) {}

    /** The same action and rules always give the same answer. */
    public static FirstAssembly of(Action action, ShopRules rules) {
        List<Landing> landings = action.landings(rules.value("regulation.force-times"));
        Mechanism raw = action.mechanism();
        Mechanism aimed = Thicknesses.of(raw, landings).in(raw);
        Spread spread = new Spread(
                METRES * rules.value("assembly.contact-u_mm"),
                METRES * rules.value("assembly.arm-u_mm"),
                METRES * rules.value("assembly.pad-u_mm"),
                DRAWS,
                1,
                METRES * rules.value("regulation.closed_mm"));
        Yield yield = Assembly.yieldByLink(aimed, landings, spread);
        List<Gain> most = yield.linkExact().stream()
                .sorted(Comparator.comparingDouble(Yield.LinkExact::allClosed)
                        .reversed()
                        .thenComparingDouble(Yield.LinkExact::meanGap))
                .limit(TOLD)
                .map(link -> new Gain(link.link(), link.allClosed(), link.meanGap() / METRES))
                .toList();
        return new FirstAssembly(yield.allClosed(), yield.worstCup(), yield.gapP95() / METRES, most);
    }
}
