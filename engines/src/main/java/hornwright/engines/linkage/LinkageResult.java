package hornwright.engines.linkage;

import org.jspecify.annotations.Nullable;

/**
 * Rest, thicknesses, order and yield.
 *
 * @param pressed rest under the fingers
 * @param free rest with nothing pressed
 * @param thicknesses that make every set land together
 * @param sensitivity change of each cup's gap under the fingers for 0.1 mm more at each link, m; [link][cup]
 * @param order in which links are set
 * @param yield of first assemblies; null without a spread or without a set
 */
public record LinkageResult(
        Equilibrium pressed,
        Equilibrium free,
        Thicknesses thicknesses,
        double[][] sensitivity,
        BenchOrder order,
        @Nullable Yield yield) {}
