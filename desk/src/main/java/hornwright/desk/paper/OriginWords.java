package hornwright.desk.paper;

import hornwright.bench.plan.origin.OriginalityStatement;
import hornwright.desk.paper.OwnerReport.Item;
import hornwright.desk.paper.OwnerReport.Section;
import java.util.ArrayList;
import java.util.List;

/** How original the horn is, for its owner; every line that speaks of the factory carries its grade. */
final class OriginWords {
    private static final String HEADING = "How original it is";

    private OriginWords() {}

    static Section of(OriginalityStatement statement) {
        if (statement.isEmpty()) {
            return new Section(HEADING, List.of(), List.of());
        }
        List<String> paragraphs = new ArrayList<>(List.of(statement.opening()));
        statement.stamps().forEach(stamp -> paragraphs.add(stamp + "."));
        statement.forOwner().forEach(told -> paragraphs.add(told + "."));
        return new Section(
                HEADING,
                paragraphs,
                statement.lines().stream()
                        .map(line -> new Item(capital(line.words()), line.what() + "."))
                        .toList());
    }

    private static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
