package hornwright.engines.linkage;

import java.util.List;

/** Cups that must land at the same instant when one key is pressed. */
public record Landing(Press press, List<String> cups) {
    public Landing {
        cups = List.copyOf(cups);
    }
}
