package hornwright.bench.job;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Which edit was the last to write each field, walking a history from its end. */
final class Standing {
    private final Map<String, Posted> lastByName = new HashMap<>();
    private Optional<Posted> lastOfEverything = Optional.empty();
    private Optional<Posted> lastOfAll = Optional.empty();

    /** The last of the edits walked so far that meets these fields. */
    Optional<Posted> on(Fields fields) {
        if (fields.everything()) {
            return lastOfAll;
        }
        return fields.names().stream()
                .flatMap(name -> Optional.ofNullable(lastByName.get(name)).stream())
                .reduce(Standing::later)
                .map(named -> lastOfEverything.map(all -> later(all, named)).orElse(named))
                .or(() -> lastOfEverything);
    }

    /** Walks one edit back. */
    void add(Posted posted, Fields fields) {
        if (fields.everything() && lastOfEverything.isEmpty()) {
            lastOfEverything = Optional.of(posted);
        }
        if (lastOfAll.isEmpty()) {
            lastOfAll = Optional.of(posted);
        }
        fields.names().forEach(name -> lastByName.putIfAbsent(name, posted));
    }

    private static Posted later(Posted a, Posted b) {
        return a.seq() > b.seq() ? a : b;
    }
}
