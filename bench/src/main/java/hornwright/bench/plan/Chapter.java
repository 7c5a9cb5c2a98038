package hornwright.bench.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What one part of the planning has to say: numbers for places, warnings, and the becauses they stand on. A chapter that
 * takes long (tuning, yield, bounce) is added to a finished plan by {@link Plan#with}.
 *
 * @param name of the chapter: "pads", "heights"
 * @param numbers by place, then by name
 * @param advice by place
 */
public record Chapter(
        String name,
        Map<String, Map<NumberName, PlannedNumber>> numbers,
        Map<String, List<Advice>> advice,
        List<Warning> warnings,
        Becauses becauses) {
    public Chapter {
        Map<String, Map<NumberName, PlannedNumber>> copied = new LinkedHashMap<>();
        numbers.forEach((place, byName) -> copied.put(place, Collections.unmodifiableMap(new LinkedHashMap<>(byName))));
        numbers = Collections.unmodifiableMap(copied);
        advice = Collections.unmodifiableMap(new LinkedHashMap<>(advice));
        warnings = List.copyOf(warnings);
    }
}
