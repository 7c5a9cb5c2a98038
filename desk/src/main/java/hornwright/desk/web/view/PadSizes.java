package hornwright.desk.web.view;

import hornwright.bench.horn.Cup;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedPlace;
import java.util.List;
import java.util.function.Function;

/**
 * How far the pads of a horn are sized.
 *
 * @param sized with a diameter that stands
 * @param provisional with a diameter that may still move, because their key does not fit yet
 */
public record PadSizes(long sized, long provisional, long all) {
    /** How far one pad is. */
    public enum Size {
        OPEN,
        PROVISIONAL,
        SIZED
    }

    public static PadSizes of(OnBench bench) {
        return of(bench.keywork().cups().list(), cup -> size(bench, cup));
    }

    public static PadSizes of(List<Cup> cups, Function<Cup, Size> size) {
        return new PadSizes(
                cups.stream().filter(cup -> size.apply(cup) == Size.SIZED).count(),
                cups.stream().filter(cup -> size.apply(cup) == Size.PROVISIONAL).count(),
                cups.size());
    }

    public static Size size(OnBench bench, Cup cup) {
        if (bench.numberOf(cup, NumberName.DIAMETER).isEmpty()) {
            return Size.OPEN;
        }
        boolean provisional = bench.padOf(cup)
                .flatMap(bench::planned)
                .map(PlannedPlace::provisional)
                .isPresent();
        return provisional ? Size.PROVISIONAL : Size.SIZED;
    }

    /** "18 pads sized, 6 provisional", "no pad sized yet". */
    public String words() {
        if (sized + provisional == 0) {
            return "no pad sized yet";
        }
        String known = sized == all ? "all %d pads sized".formatted(all) : "%d of %d pads sized".formatted(sized, all);
        return provisional == 0 ? known : known + ", %d provisional".formatted(provisional);
    }
}
