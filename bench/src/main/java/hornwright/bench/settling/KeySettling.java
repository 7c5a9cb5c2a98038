package hornwright.bench.settling;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Layer;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.Stop;
import hornwright.bench.horn.StopKind;
import hornwright.bench.material.Materials;
import hornwright.bench.rules.Rule;
import hornwright.bench.rules.ShopRules;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Settling on a horn: stops lift their cups higher, links gain lost motion. */
public final class KeySettling {
    private final Keywork keywork;
    private final Map<String, Laid> asLaid;
    private final Set<String> fresh;
    private final Materials materials;

    /**
     * @param asLaid material and thickness where they differ from the pattern, by place
     * @param fresh places whose material is new
     */
    public KeySettling(Keywork keywork, Map<String, Laid> asLaid, Set<String> fresh, Materials materials) {
        this.keywork = keywork;
        this.asLaid = Map.copyOf(asLaid);
        this.fresh = Set.copyOf(fresh);
        this.materials = materials;
    }

    /** What the stop that ends opening loses under its spring. */
    public Settling stop(Key key) {
        Stop stop = key.stop();
        double rest = Math.abs(key.spring().torqueNmm() - key.spring().rateNmmPerRad() * key.restRotationRad());
        return Settling.of(
                layers(stop.layers()),
                rest / stop.armMm(),
                area(stop, materials.rules()).value(),
                materials);
    }

    /** What a link loses; nothing rests on an idle link to speak of. */
    public Settling link(Link link) {
        double area = materials.rules().value("bounce.foot-area_mm2");
        return Settling.of(layers(link.layers()), 0, area, materials);
    }

    /** How much higher the cup will stand at its centre, for a key that rests open. */
    public Optional<Recheck> height(Key key, LocalDate laid) {
        Optional<Cup> cup = keywork.cupOf(key);
        return cup.filter(each -> key.restRotationRad() > 0)
                .map(each -> Recheck.of(stop(key), each.armMm() / key.stop().armMm(), laid, materials.rules()));
    }

    /** How much lost motion a link gains at its contact. */
    public Recheck lostMotion(Link link, LocalDate laid) {
        return Recheck.of(link(link), 1, laid, materials.rules());
    }

    private List<Laid> layers(List<Layer> layers) {
        return layers.stream().map(this::laid).toList();
    }

    private Laid laid(Layer layer) {
        boolean isFresh = fresh.contains(layer.place());
        Laid other = asLaid.get(layer.place());
        return other == null
                ? new Laid(layer.place(), layer.material(), layer.thicknessMm(), isFresh)
                : new Laid(layer.place(), other.material(), other.thicknessMm(), isFresh);
    }

    /** Area a stop lands on, mm². */
    public static Rule area(Stop stop, ShopRules rules) {
        return rules.get(stop.kind() == StopKind.GUARD ? "bounce.guard-area_mm2" : "bounce.foot-area_mm2");
    }
}
