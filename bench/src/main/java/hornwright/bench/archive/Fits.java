package hornwright.bench.archive;

import hornwright.engines.belief.Standing;
import java.util.List;

/**
 * What is known of one part at a place of one serial.
 *
 * @param about a claim that speaks of it: kind, part, size
 * @param span serials those for it speak of, from the lowest to the highest
 * @param standing whether this serial is one of those, lies between them or beyond
 * @param items for and against, as they were entered
 */
public record Fits(Fitting about, SerialRange span, Standing standing, Grading grading, List<Fitting> items) {
    public Fits {
        items = List.copyOf(items);
    }
}
