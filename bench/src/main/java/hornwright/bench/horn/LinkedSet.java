package hornwright.bench.horn;

import java.util.List;

/**
 * Cups whose pads are kept or replaced together, because hard and soft pads side by side do not hold regulation.
 */
public record LinkedSet(TradeName name, List<String> cups) {
    public LinkedSet {
        cups = List.copyOf(cups);
    }
}
