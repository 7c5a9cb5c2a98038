package hornwright.bench.plan;

import hornwright.bench.care.Hazard;
import java.util.List;

/**
 * One thing to do at a place, in order of how little it intrudes.
 *
 * @param words an instruction
 * @param cautions what can go wrong with it
 * @param recheck steps of the order of work to look at again afterwards
 */
public record Advice(String words, List<Hazard> cautions, List<String> recheck) {
    public Advice {
        cautions = List.copyOf(cautions);
        recheck = List.copyOf(recheck);
    }

    public static Advice of(String words, Hazard... cautions) {
        return new Advice(words, List.of(cautions), List.of());
    }
}
