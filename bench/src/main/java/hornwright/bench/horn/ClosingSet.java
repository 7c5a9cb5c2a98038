package hornwright.bench.horn;

import java.util.List;

/**
 * Cups that must land at the same instant when one key is pressed.
 */
public record ClosingSet(String press, List<String> closes) {
    public ClosingSet {
        closes = List.copyOf(closes);
    }
}
