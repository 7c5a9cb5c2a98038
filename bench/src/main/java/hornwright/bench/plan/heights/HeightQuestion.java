package hornwright.bench.plan.heights;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Face;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.StopKind;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.stock.Stock;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.Stage;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Everything the height of one cup depends on, and nothing else; equal questions have equal answers.
 *
 * @param before front heights read before anything was touched
 * @param fronts front heights that still count
 * @param centres centre heights that still count
 * @param shims trial shims at the key foot
 * @param clearances metal to metal at the foot, key closed
 * @param feet distances from axis to foot
 * @param layers at the stop that ends opening
 * @param decided front height a person settled on, with why
 */
public record HeightQuestion(
        Keywork keywork,
        Cup cup,
        List<Reading> before,
        List<Reading> fronts,
        List<Reading> centres,
        List<Reading> holes,
        List<Reading> arms,
        List<Reading> shims,
        List<Reading> clearances,
        List<Reading> feet,
        List<LayerNow> layers,
        Decision.@Nullable Height decided,
        Stock stock,
        ShopRules rules) {
    public HeightQuestion {
        layers = List.copyOf(layers);
    }

    Key key() {
        return keywork.keyOf(cup);
    }

    String pad() {
        return "pad." + cup.hole();
    }

    String display() {
        return keywork.nameOf(cup).display();
    }

    /** Whether the height that stands for now was read before new pads went in. */
    boolean readWithOldPad() {
        return Stream.concat(fronts.stream(), centres.stream())
                .anyMatch(reading -> reading.stage().compareTo(Stage.PADDED) < 0);
    }

    boolean guarded() {
        return key().stop().kind() == StopKind.GUARD;
    }

    /** The layer that is cut and sanded to the height: the one on the key, else the first. */
    @Nullable
    LayerNow adjusted() {
        return layers.stream()
                .filter(now -> now.layer().face() == Face.KEY)
                .findFirst()
                .orElse(layers.isEmpty() ? null : layers.getFirst());
    }
}
