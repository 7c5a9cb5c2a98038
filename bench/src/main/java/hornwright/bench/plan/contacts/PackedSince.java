package hornwright.bench.plan.contacts;

import hornwright.bench.horn.Place;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.Built;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.rules.Rule;
import hornwright.bench.rules.ShopRules;
import java.util.Optional;

/**
 * How thick a piece was when it left the factory, from what old, packed pieces of its kind measure now: they have lost what
 * their material loses.
 */
final class PackedSince {
    private PackedSince() {}

    static Optional<PlannedNumber> asBuilt(Place place, Built built, ShopRules rules, Reasons reasons) {
        Double measured = built.thicknessMm();
        String material = built.material();
        if (!built.atLeast() || measured == null || material == null || !(measured > 0)) {
            return Optional.empty();
        }
        String id = "settling." + material.replace(' ', '-');
        PlannedNumber share = reasons.rule(rules, rules.find(id).map(Rule::id).orElse("settling.unknown"));
        Rule differs = rules.get("foot.from-pattern_mm");
        PlannedNumber now = reasons.leaf(
                new Because.FromArchive(
                        "archive thickness " + place.id(), "the middle one of those measured on witnesses", place.id()),
                measured,
                "mm",
                Math.hypot(rules.value("u.caliper_mm"), differs.value() * ofTheMiddleOne(built.horns())));
        return Optional.of(reasons.derive(
                place.id() + "/asBuilt",
                "measured on old pieces / (1 - share the material loses); this horn's may have differed",
                "mm",
                in -> in[0] / (1 - in[1]) + in[2] - differs.value(),
                Because.Input.of("measured on witnesses", now),
                Because.Input.of("share lost", share),
                Because.Input.of("may have differed by", reasons.rule(rules, differs.id()))));
    }

    /**
     * The pieces measured differ from each other as this horn's does from them. How far the middle one of n normal draws
     * strays, in the spread of one: √(π / (2n + π - 2)), exact for one and for very many.
     */
    private static double ofTheMiddleOne(int horns) {
        return Math.sqrt(Math.PI / (2 * Math.max(1, horns) + Math.PI - 2));
    }
}
