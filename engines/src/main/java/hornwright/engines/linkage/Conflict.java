package hornwright.engines.linkage;

import java.util.List;

/** Sets (by the key they press) that ask different thicknesses of one link, and the range they ask for, m. */
public record Conflict(String link, List<String> presses, double least, double most) {
    public Conflict {
        presses = List.copyOf(presses);
    }
}
