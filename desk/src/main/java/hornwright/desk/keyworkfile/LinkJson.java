package hornwright.desk.keyworkfile;

import hornwright.bench.horn.AdjustingScrew;
import hornwright.bench.horn.Coupling;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.LinkKind;
import hornwright.bench.horn.Rest;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;

/** A link in JSON. */
final class LinkJson {
    private LinkJson() {}

    static Link read(Fields f, Layers layers) {
        return new Link(
                Names.id(f, "link.a-to-bis"),
                f.choice("kind", Words.of(LinkKind.class)),
                f.text("driver", "a"),
                f.number("driverArm_mm", Bound.POSITIVE, "14"),
                f.text("follower", "bis"),
                f.number("followerArm_mm", Bound.POSITIVE, "13"),
                f.number("space_mm", Bound.NOT_NEGATIVE, "0.8"),
                f.number("stiffness_N_per_mm", Bound.POSITIVE, "625"),
                Names.position(f),
                layers.read(f),
                f.objectIfAny("coupling", LinkJson::coupling),
                f.objectIfAny("screw", LinkJson::screw));
    }

    private static AdjustingScrew screw(Fields f) {
        return new AdjustingScrew(f.number("pitch_mm", Bound.POSITIVE, "0.4"));
    }

    private static Coupling coupling(Fields f) {
        WhenKey when = f.object("when", w -> new WhenKey(w.text("key", "g"), w.choice("state", Words.of(Rest.class))));
        return new Coupling(
                f.text("through", "octave-switch"),
                when.key(),
                when.state(),
                f.number("idleClearance_mm", Bound.NOT_NEGATIVE, "0.4"),
                f.number("idleDriverArm_mm", Bound.NOT_NEGATIVE, "0.8"));
    }

    private record WhenKey(String key, Rest state) {}

    static Out write(Link link) {
        Out out = Out.object()
                .put("id", link.id())
                .put("kind", link.kind().word())
                .put("driver", link.driver())
                .put("driverArm_mm", link.driverArmMm())
                .put("follower", link.follower())
                .put("followerArm_mm", link.followerArmMm())
                .put("space_mm", link.spaceMm())
                .put("stiffness_N_per_mm", link.stiffnessNPerMm());
        Names.put(out, link.at()).put("layers", Layers.write(link.layers()));
        Coupling coupling = link.coupling();
        if (coupling != null) {
            out.put("coupling", write(coupling));
        }
        AdjustingScrew screw = link.screw();
        return screw == null ? out : out.put("screw", Out.object().put("pitch_mm", screw.pitchMm()));
    }

    private static Out write(Coupling coupling) {
        Out when = Out.object()
                .put("key", coupling.whenKey())
                .put("state", coupling.whenState().word());
        return Out.object()
                .put("through", coupling.through())
                .put("when", when)
                .put("idleClearance_mm", coupling.idleClearanceMm())
                .put("idleDriverArm_mm", coupling.idleDriverArmMm());
    }
}
