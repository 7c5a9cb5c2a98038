package hornwright.bench.plan.treatment;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.LinkedSet;
import hornwright.bench.plan.Warning;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Pads that close together: old hard ones beside new soft ones do not hold regulation (common practice). The plan never
 * throws a sound pad away for it; it offers the whole set and says what keeping both costs.
 */
public final class LinkedPads {
    private LinkedPads() {}

    public static List<Warning> warnings(Keywork keywork, Map<String, PlaceTreatment> treatments) {
        return keywork.linkedSets().stream()
                .flatMap(set -> warning(keywork, set, treatments).stream())
                .toList();
    }

    private static Optional<Warning> warning(Keywork keywork, LinkedSet set, Map<String, PlaceTreatment> treatments) {
        List<String> kept = new ArrayList<>();
        List<String> renewed = new ArrayList<>();
        List<String> about = new ArrayList<>();
        for (String id : set.cups()) {
            Cup cup = keywork.cups().get(id);
            PlaceTreatment pad = treatments.get("pad." + cup.hole());
            if (pad != null && !pad.provisional()) {
                (pad.mayNeedNew() ? renewed : kept).add(keywork.nameOf(cup).display());
                about.add(pad.place());
            }
        }
        if (kept.isEmpty() || renewed.isEmpty()) {
            return Optional.empty();
        }
        String words = String.join(", ", kept) + " kept beside " + String.join(", ", renewed)
                + " new. Hard old and soft new pads do not hold regulation together: renew the whole set, or keep it"
                + " whole, or expect to regulate it again after some weeks.";
        return Optional.of(new Warning(Warning.Sort.LINKED_SET, set.name().display() + ": " + words, about));
    }
}
