package hornwright.bench.fit;

import hornwright.bench.care.Hazard;
import hornwright.bench.horn.Rod;
import hornwright.bench.horn.RodKind;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.sheet.Remedy;
import hornwright.bench.survey.Treatment.Reversible;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What takes play out of a key, least intrusive first. Ways are common practice, minutes bench judgement. */
final class FitRemedies {
    private final ShopRules rules;
    private final Rod rod;

    FitRemedies(ShopRules rules, Rod rod) {
        this.rules = rules;
        this.rod = rod;
    }

    /** Against play across the rod. */
    List<Remedy> across(double clearanceMm, @Nullable PlannedNumber share) {
        List<Remedy> ways = new ArrayList<>();
        ways.add(Remedy.of(
                "Straighten and clean first: a bent rod, a bent tube or a post out of line feels like play",
                "roll the rod on a flat plate; it must drop through the bare tube",
                5,
                15,
                Reversible.YES,
                Hazard.BENDING));
        if (rod.kind() == RodKind.PIVOT) {
            ways.add(Remedy.of(
                    "Turn the pivots in; if they bottom, counterbore the post or fit longer pivots",
                    "stop when the key still falls by its own weight",
                    5,
                    30,
                    Reversible.PARTLY));
            return ways;
        }
        if (clearanceMm <= rules.value("fit.swedge-most_mm") && mayClose(share)) {
            ways.add(swedge(share));
        }
        ways.add(Remedy.of(
                "Bush the tube, or the post hole when that is bell-mouthed",
                "ream to the rod, not the rod to the bush",
                20,
                45,
                Reversible.PARTLY,
                Hazard.HEAT));
        ways.add(Remedy.of(
                String.format(
                        Locale.ROOT,
                        "Fit an oversize rod: %.2f mm and more, tube and posts reamed to it",
                        rod.diameterMm() + clearanceMm),
                "the old rod goes into the bag; ream a hundredth at a time",
                30,
                60,
                Reversible.NO));
        return ways;
    }

    /** Against play along the rod. */
    List<Remedy> along() {
        return List.of(
                Remedy.of(
                        "Look at the posts: one that was knocked gives play along the rod",
                        "set it upright, no further",
                        2,
                        10,
                        Reversible.YES,
                        Hazard.BENDING),
                Remedy.of(
                        "Lengthen the tube by closing it a little near its end, then face both ends square",
                        "face until no gap is seen and the key still falls by its own weight",
                        5,
                        15,
                        Reversible.NO,
                        Hazard.SWEDGING),
                Remedy.of(
                        "A thin washer where the tube must not be touched",
                        "for display and for plated tubes; say so in the report",
                        5,
                        10,
                        Reversible.YES));
    }

    private boolean mayClose(@Nullable PlannedNumber share) {
        return share == null || share.value() >= rules.value("fit.swedge-share");
    }

    private Remedy swedge(@Nullable PlannedNumber share) {
        String limit = String.format(
                Locale.ROOT,
                "rod in the tube, stop at free turn; close at least %.0f in 100 of the tube%s",
                100 * rules.value("fit.swedge-share"),
                share == null ? " (how much can be got at is not measured)" : "");
        return Remedy.of(
                "Close the tube on its rod, collet before pliers, then face the ends square",
                limit,
                5,
                20,
                Reversible.NO,
                Hazard.SWEDGING);
    }
}
