package hornwright.bench.plan.heights;

import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.CupGeometry;
import hornwright.bench.plan.measured.ReadNumbers;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How much the front edge rises for each millimetre taken off at the stop: from a trial shim, from the two arms, or what is
 * typical. The surest is taken.
 */
final class RiseRatio {
    private final HeightQuestion ask;
    private final CupGeometry geometry;
    private final Reasons reasons;
    private final String place;

    RiseRatio(HeightQuestion ask, CupGeometry geometry, Reasons reasons, String place) {
        this.ask = ask;
        this.geometry = geometry;
        this.reasons = reasons;
        this.place = place;
    }

    PlannedNumber best() {
        List<PlannedNumber> ways = new ArrayList<>();
        ask.shims().forEach(shim -> fromShim(shim).ifPresent(ways::add));
        fromArms().ifPresent(ways::add);
        ways.add(typical());
        return ways.stream()
                .min(Comparator.comparingDouble(way -> way.u() / way.value()))
                .orElseThrow();
    }

    private Optional<PlannedNumber> fromShim(Reading reading) {
        if (!(reading.observed() instanceof Observed.TrialShim shim)
                || !(shim.withoutMm() > shim.withMm() && shim.shimMm() > 0)) {
            return Optional.empty();
        }
        ReadNumbers read = new ReadNumbers(ask.rules(), reasons);
        return Optional.of(reasons.derive(
                place + "/ratio from shim " + reading.id(),
                "(height without the shim - height with it) / shim",
                "",
                in -> (in[0] - in[1]) / in[2],
                Because.Input.of(
                        "height without", read.part(reading, "height without the shim", shim.withoutMm(), shim.u())),
                Because.Input.of("height with", read.part(reading, "height with the shim", shim.withMm(), shim.u())),
                Because.Input.of(
                        "shim",
                        read.part(
                                reading,
                                "thickness of the shim",
                                shim.shimMm(),
                                ask.rules().value("u.shim_mm")))));
    }

    private Optional<PlannedNumber> fromArms() {
        return new ReadNumbers(ask.rules(), reasons)
                .mean(place + "/axis to foot", "mean of the distances read", CupGeometry.sizes(ask.feet()))
                .map(foot -> {
                    PlannedNumber turning = reasons.rule(ask.rules(), "ratio.turning-share");
                    return reasons.derive(
                            place + "/ratio from the arms",
                            "(axis to centre + hole / 2) / axis to foot; neither point lies level with the axis, which"
                                    + " turns the ratio by a share",
                            "",
                            in -> (in[1] + in[0] / 2) / in[2] * (1 - in[3]),
                            geometry.holeInput(),
                            geometry.armInput(),
                            Because.Input.of("axis to foot", foot),
                            Because.Input.of("turned by", turning));
                });
    }

    private PlannedNumber typical() {
        PlannedNumber centre = reasons.rule(ask.rules(), ask.guarded() ? "ratio.guard-centre" : "ratio.foot-centre");
        return reasons.derive(
                place + "/ratio, typical",
                "typical rise at the cup centre x (axis to centre + hole / 2) / axis to centre; check yours with a trial"
                        + " shim",
                "",
                in -> in[0] * (in[2] + in[1] / 2) / in[2],
                Because.Input.of("typical rise at the centre", centre),
                geometry.holeInput(),
                geometry.armInput());
    }
}
