package hornwright.bench.horn;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Cups that must be held shut while one key is pressed, even when the key that normally holds them is let go.
 */
public record Hold(
        String press, List<String> holds, @Nullable String whileReleased) {
    public Hold {
        holds = List.copyOf(holds);
    }
}
