package hornwright.bench.sheet;

import hornwright.bench.plan.Becauses;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What a sheet says.
 *
 * @param summary one line over the whole sheet
 * @param order what to do first, next, and what each does elsewhere; empty when any order will do
 * @param becauses of every number on it
 */
public record SheetAnswer(String summary, List<SheetLine> lines, List<String> order, Becauses becauses) {
    public SheetAnswer {
        lines = List.copyOf(lines);
        order = List.copyOf(order);
    }

    public Map<String, SheetLine> byId() {
        return lines.stream()
                .collect(Collectors.toMap(SheetLine::id, Function.identity(), (a, b) -> b, LinkedHashMap::new));
    }

    public Optional<SheetLine> line(String id) {
        return lines.stream().filter(line -> line.id().equals(id)).findFirst();
    }

    /** How many lines have this verdict. */
    public long count(Verdict verdict) {
        return lines.stream().filter(line -> line.verdict() == verdict).count();
    }
}
