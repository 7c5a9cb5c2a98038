package hornwright.bench.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The becauses of a plan, shared by all its numbers. */
public record Becauses(Map<String, Because> byId) {
    public Becauses {
        byId = Collections.unmodifiableMap(new LinkedHashMap<>(byId));
    }

    public static Becauses none() {
        return new Becauses(Map.of());
    }

    public Optional<Because> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    public Because get(String id) {
        return find(id).orElseThrow(() -> new NoSuchElementException("no because is called " + id));
    }

    public Becauses and(Becauses more) {
        Map<String, Because> all = new LinkedHashMap<>(byId);
        all.putAll(more.byId);
        return new Becauses(all);
    }

    /** Every leaf under a because, first met first; a leaf is its own only leaf. */
    public List<Because.Leaf> leaves(String id) {
        List<Because.Leaf> leaves = new ArrayList<>();
        gather(id, new LinkedHashSet<>(), leaves);
        return List.copyOf(leaves);
    }

    /** What a number rests on, in a few words: "reading; shop rule, common practice, typical". */
    public String source(String id) {
        return leaves(id).stream().map(Because.Leaf::kind).distinct().collect(Collectors.joining("; "));
    }

    private void gather(String id, Set<String> seen, List<Because.Leaf> leaves) {
        if (!seen.add(id)) {
            return;
        }
        Because because = get(id);
        if (because instanceof Because.Leaf leaf) {
            leaves.add(leaf);
        }
        because.inputs().forEach(input -> gather(input.because(), seen, leaves));
    }
}
