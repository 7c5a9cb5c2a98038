package hornwright.bench.archive;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Everything for and against one claim. Its grade follows from these by rule, whatever the order of entry.
 *
 * <p>A resolved item is set aside: it neither contests nor refutes, but it stays in the ledger and in the counts shown.
 *
 * @param search filled when somebody looked for more; without it nothing is Established
 */
public record Ledger(
        Claim claim, List<Evidence> items, @Nullable SearchLog search, List<Resolution> resolutions) {
    public Ledger {
        items = List.copyOf(items);
        resolutions = List.copyOf(resolutions);
        Map<String, Kind> kinds = new HashMap<>();
        for (Evidence item : items) {
            Kind known = kinds.putIfAbsent(item.origin().id(), item.kind());
            if (known != null && known != item.kind()) {
                throw new IllegalArgumentException("origin " + item.origin().id() + " has two kinds");
            }
        }
    }

    public Grading grade() {
        Side support = new Side(side(Stance.SUPPORTS), claim.serials());
        Set<String> resolved = resolutions.stream().map(Resolution::evidence).collect(Collectors.toSet());
        List<Evidence> open = side(Stance.CONTRADICTS).stream()
                .filter(item -> !resolved.contains(item.id()))
                .toList();
        Side against = new Side(open, claim.serials());
        Grade alone = support.alone(search != null);
        Grade opposite = against.alone(search != null);
        if (opposite.isAtLeast(Grade.WELL_SUPPORTED) && !alone.isAtLeast(Grade.INDICATED)) {
            return grading(Grade.REFUTED, "what speaks against it would by itself be " + opposite.word());
        }
        if (against.ofAtLeast(2) > 0) {
            return grading(Grade.CONTESTED, "an item of strength 2 or more speaks against it and is not resolved");
        }
        return grading(alone, support.inWords());
    }

    private List<Evidence> side(Stance stance) {
        return items.stream().filter(item -> item.stance() == stance).toList();
    }

    private Grading grading(Grade grade, String reason) {
        long groups = items.stream().map(Evidence::origin).distinct().count();
        int supporting = side(Stance.SUPPORTS).size();
        return new Grading(grade, supporting, items.size() - supporting, (int) groups, List.of(reason), Grade.RULES);
    }
}
