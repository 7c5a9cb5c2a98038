package hornwright.bench.neck;

import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.NeckPoint;
import java.util.Optional;

/** How thick the neck cork is at either end, from the bore of the mouthpiece and the taper of the neck under it. */
record Cork(Tenon neck, Reasons reasons, ShopRules rules) {
    Optional<PlannedNumber> atTheTip() {
        return thickness("tip", NeckPoint.NECK_END);
    }

    Optional<PlannedNumber> atTheBack() {
        return thickness("back", NeckPoint.CORK_BACK);
    }

    /** The sheet to cut from: the thicker end and what is sanded off. */
    Optional<PlannedNumber> sheet() {
        Optional<PlannedNumber> thicker = atTheTip()
                .map(tip ->
                        atTheBack().filter(back -> back.value() > tip.value()).orElse(tip))
                .or(this::atTheBack);
        return thicker.map(thick -> reasons.derive(
                "neck/cork sheet",
                "thicker end + what is sanded off to fit",
                "mm",
                in -> in[0] + in[1],
                Because.Input.of("thicker end", thick),
                Because.Input.of("sanded off", reasons.rule(rules, "neck.cork-sand_mm"))));
    }

    /** Half of what is left between bore and neck, and so much more as the cork is squeezed. */
    private Optional<PlannedNumber> thickness(String end, NeckPoint outside) {
        Optional<PlannedNumber> bore = neck.at(NeckPoint.BORE);
        Optional<PlannedNumber> tube = neck.at(outside);
        if (bore.isEmpty() || tube.isEmpty() || bore.get().value() <= tube.get().value()) {
            return Optional.empty();
        }
        return Optional.of(reasons.derive(
                "neck/cork at the " + end,
                "(mouthpiece bore - neck outside) / 2 / (1 - squeeze)",
                "mm",
                in -> (in[0] - in[1]) / 2 / (1 - in[2]),
                Because.Input.of("mouthpiece bore", bore.get()),
                Because.Input.of("neck outside", tube.get()),
                Because.Input.of("squeeze", reasons.rule(rules, "neck.cork-squeeze"))));
    }
}
