package hornwright.bench.archive;

import hornwright.bench.horn.PlaceKind;
import hornwright.bench.horn.Word;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** What is asked to fit something, and the kinds of place where it goes. */
public enum FitKind implements Word {
    RESONATOR_SCREW("screw of a two-piece resonator", "thread", EnumSet.of(PlaceKind.RESONATOR)),
    PAD("pad for a family of cups", "diameter", EnumSet.of(PlaceKind.PAD)),
    SPRING("spring", "thickness", EnumSet.of(PlaceKind.SPRING)),
    ROLLER("roller", "diameter", EnumSet.of(PlaceKind.ROLLER)),
    SCREW("screw", "thread", EnumSet.of(PlaceKind.SCREW_HEAD, PlaceKind.NECK_SCREW, PlaceKind.GUARD_SCREW));

    private final String word;
    private final String size;
    private final Set<PlaceKind> goesTo;

    FitKind(String word, String size, Set<PlaceKind> goesTo) {
        this.word = word;
        this.size = size;
        this.goesTo = goesTo;
    }

    @Override
    public String word() {
        return word;
    }

    /** Which of its sizes decides whether it fits. */
    public String size() {
        return size;
    }

    public boolean goesTo(PlaceKind kind) {
        return goesTo.contains(kind);
    }

    /** What one would ask for at such a place; empty where nothing is fitted that comes ready made. */
    public static Optional<FitKind> at(PlaceKind kind) {
        return Arrays.stream(values()).filter(fit -> fit.goesTo(kind)).findFirst();
    }
}
