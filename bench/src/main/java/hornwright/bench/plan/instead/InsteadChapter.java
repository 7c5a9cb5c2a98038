package hornwright.bench.plan.instead;

import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Layer;
import hornwright.bench.material.Materials;
import hornwright.bench.material.Property;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Planner;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.bounce.BounceChapter;
import hornwright.bench.plan.bounce.BounceQuestion;
import hornwright.bench.plan.bounce.Bounced;
import hornwright.bench.plan.origin.LaterUse;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.settling.KeySettling;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Treatment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What each material would change at a place that carries a piece of cork, felt or leather. The plan is made again with it
 * laid there, and the key is let go again on it; nothing is estimated beside the engines.
 */
public final class InsteadChapter {
    private static final double CUBIC_MM_TO_G = 1e-6;

    private final InsteadQuestion ask;
    private final Layer layer;
    private final @Nullable Key key;
    private final ShopRules rules;
    private final Materials materials;
    private final Planner planner = new Planner();
    private final Reasons reasons = new Reasons();
    private final List<Becauses> more = new ArrayList<>();

    private InsteadChapter(InsteadQuestion ask, Layer layer, @Nullable Key key) {
        this.ask = ask;
        this.layer = layer;
        this.key = key;
        this.rules = ask.inputs().rules();
        this.materials = Materials.of(rules);
    }

    /** Empty for a place that carries no such piece. */
    public static Optional<InsteadAnswer> of(InsteadQuestion ask) {
        Keywork keywork = ask.inputs().keywork();
        for (Key key : keywork.keys()) {
            for (Layer layer : key.stop().layers()) {
                if (layer.place().equals(ask.place())) {
                    return Optional.of(new InsteadChapter(ask, layer, key).answer());
                }
            }
        }
        return keywork.links().stream()
                .flatMap(link -> link.layers().stream())
                .filter(layer -> layer.place().equals(ask.place()))
                .findFirst()
                .map(layer -> new InsteadChapter(ask, layer, null).answer());
    }

    private InsteadAnswer answer() {
        String built = builtMaterial();
        Plan base = planner.replan(with(built, true));
        more.add(base.becauses());
        PlannedNumber thickness = thickness(base);
        PlannedNumber ratio = ratio(base);
        Substitute first = laid(built, built, thickness, ratio);
        List<Substitute> others = materials.listed().stream()
                .filter(material -> !material.equals(built) && !material.equals("unknown"))
                .map(material -> laid(material, built, thickness, ratio))
                .sorted(Comparator.comparing(Substitute::belongs).thenComparingDouble(one -> change(first, one)))
                .toList();
        Becauses all = reasons.table();
        for (Becauses table : more) {
            all = all.and(table);
        }
        return new InsteadAnswer(ask.place(), first, others, all);
    }

    private String builtMaterial() {
        AsBuiltAt known = ask.inputs().asBuilt().get(ask.place());
        return known == null || known.isGap() || known.material() == null ? layer.material() : known.material();
    }

    /** How much is different, each in what a bench can tell: a doubled stiffness, a height, a rebound, a gram. */
    private double change(Substitute built, Substitute other) {
        double stiffer =
                Math.abs(Math.log(other.stiffness().value() / built.stiffness().value()) / Math.log(2));
        double higher = other.height() == null ? 0 : Math.abs(other.height().value()) / rules.value("height.tell_mm");
        double heavier = Math.abs(other.mass().value() - built.mass().value());
        Bounced now = built.bounce();
        Bounced then = other.bounce();
        double livelier = now == null || then == null
                ? 0
                : Math.abs(then.rebound().value() - now.rebound().value()) / rules.value("bounce.seen_mm");
        return stiffer + higher + heavier + livelier;
    }

    private Substitute laid(String material, String built, PlannedNumber thickness, @Nullable PlannedNumber ratio) {
        boolean same = material.equals(built);
        Plan plan = planner.replan(with(material, same));
        return new Substitute(
                material,
                belongs(material, same),
                Look.of(material),
                thickness,
                rule(material, Property.MODULUS),
                mass(material, thickness),
                same || ratio == null ? null : height(material, built, thickness, ratio),
                gives(material, thickness),
                bounce(material, plan, same),
                sheet(plan));
    }

    /** The same job with this material decided on at the place. */
    private PlanInputs with(String material, boolean same) {
        List<Decision> decisions = new ArrayList<>(ask.inputs().decisions());
        decisions.removeIf(one -> one.about().equals("treat." + ask.place()));
        decisions.add(new Decision.Treat(
                ask.place(), same ? Treatment.REPLACE_LIKE : Treatment.SUBSTITUTE, material, "tried"));
        return ask.inputs().withDecisions(decisions);
    }

    private Belongs belongs(String material, boolean same) {
        if (same) {
            return Belongs.BUILT;
        }
        if (LaterUse.note(material).isPresent()) {
            return Belongs.LATER;
        }
        AsBuiltAt known = ask.inputs().asBuilt().get(ask.place());
        boolean seen = known != null && known.probabilities().containsKey(material);
        return seen ? Belongs.SEEN : Belongs.OF_THE_TRADE;
    }

    /** As the plan wants it; a piece that sets no height is cut as thick as the maker's. */
    private PlannedNumber thickness(Plan plan) {
        Optional<PlannedNumber> wanted =
                plan.number(ask.place(), NumberName.THICKNESS).filter(number -> number.value() > 0);
        String keywork = ask.inputs().keywork().id();
        return wanted.orElseGet(() -> reasons.leaf(
                new Because.FromPattern(
                        "instead/" + ask.place() + "/thickness",
                        "thickness of " + ask.place() + " in the pattern " + keywork + ", cut to it",
                        keywork),
                layer.thicknessMm(),
                "mm",
                rules.value("u.caliper_mm")));
    }

    private PlannedNumber rule(String material, Property property) {
        return reasons.rule(rules, materials.rule(material, property).id());
    }

    private PlannedNumber area() {
        return reasons.rule(
                rules,
                key == null
                        ? "bounce.foot-area_mm2"
                        : KeySettling.area(key.stop(), rules).id());
    }

    private PlannedNumber mass(String material, PlannedNumber thickness) {
        return reasons.derive(
                id(material, "mass"),
                "thickness x area x density",
                "g",
                in -> in[0] * in[1] * in[2] * CUBIC_MM_TO_G,
                Because.Input.of("thickness", thickness),
                Because.Input.of("area of the piece", area()),
                Because.Input.of("density of " + material, rule(material, Property.DENSITY)));
    }

    /** The difference of the two plans; what both share falls out, so only what parts them is named. */
    private PlannedNumber height(String material, String built, PlannedNumber thickness, PlannedNumber ratio) {
        return reasons.derive(
                id(material, "height"),
                "what it loses more than " + built
                        + " in the first weeks, at the cup: (share it packs by - share " + built
                        + " packs by) x thickness x rise for each mm at the foot; the plan made twice",
                "mm",
                in -> (in[0] - in[1]) * in[2] * in[3],
                Because.Input.of(material + " packs by", rule(material, Property.SETTLING)),
                Because.Input.of(built + " packs by", rule(built, Property.SETTLING)),
                Because.Input.of("thickness", thickness),
                Because.Input.of("rise at the front for each mm", ratio));
    }

    /** Only at the stop of a cup whose height the plan sets. */
    private @Nullable PlannedNumber ratio(Plan plan) {
        return key == null
                ? null
                : key.stop().layers().stream()
                        .flatMap(one -> plan.number(one.place(), NumberName.RATIO).stream())
                        .findFirst()
                        .orElse(null);
    }

    private PlannedNumber gives(String material, PlannedNumber thickness) {
        return reasons.derive(
                id(material, "gives"),
                "thickness x (1 N / (area x stiffness))^(1/exponent)",
                "mm",
                in -> in[0] * Math.pow(1 / (in[1] * in[2]), 1 / in[3]),
                Because.Input.of("thickness", thickness),
                Because.Input.of("area of the piece", area()),
                Because.Input.of("stiffness of " + material, rule(material, Property.MODULUS)),
                Because.Input.of("exponent of " + material, rule(material, Property.EXPONENT)));
    }

    private @Nullable Bounced bounce(String material, Plan plan, boolean period) {
        Key of = key;
        if (of == null) {
            return null;
        }
        BounceChapter.Answer answer = BounceChapter.tried(
                BounceQuestion.of(ask.inputs(), plan), of, "instead " + ask.place() + " of " + material, period);
        more.add(answer.becauses());
        return answer.of(of.id()).orElse(null);
    }

    private @Nullable PlannedNumber sheet(Plan plan) {
        return plan.number(ask.place(), NumberName.SHEET)
                .flatMap(sheet -> plan.becauses()
                        .find(sheet.because())
                        .filter(Because.Leaf.class::isInstance)
                        .map(leaf -> reasons.leaf((Because.Leaf) leaf, sheet.value(), "mm", sheet.u())))
                .orElse(null);
    }

    private String id(String material, String what) {
        return "instead/" + ask.place() + "/" + material + "/" + what;
    }
}
