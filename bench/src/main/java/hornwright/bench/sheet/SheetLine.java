package hornwright.bench.sheet;

import java.util.List;

/**
 * One thing on a sheet.
 *
 * @param id of the key, hole, joint or site
 * @param says the verdict in a sentence; empty when there is nothing to say
 * @param remedies what can be done, least intrusive first
 */
public record SheetLine(String id, Verdict verdict, String says, List<Told> numbers, List<Remedy> remedies) {
    public SheetLine {
        numbers = List.copyOf(numbers);
        remedies = List.copyOf(remedies);
    }

    public static SheetLine of(String id, Verdict verdict, String says) {
        return new SheetLine(id, verdict, says, List.of(), List.of());
    }

    public static SheetLine untried(String id) {
        return of(id, Verdict.UNTRIED, "");
    }
}
