package hornwright.bench.octave;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What to bend at one contact, and what that does elsewhere, in a sentence.
 *
 * @param name of the contact
 * @param less what happens where it touches and is bent away
 * @param more what happens where it touches and is bent further in
 * @param first what to change when no bend of it alone will do
 */
record BendWords(String name, String less, String more, String first) {
    /** @param again other contacts that the same lever works and that are tried again afterwards */
    String of(Contact contact, List<String> again) {
        return contact.bend()
                .map(bend -> "%s: bend it %s. Elsewhere: %s"
                        .formatted(name, amount(bend), elsewhere(contact, bend.least(), again)))
                .orElse("%s: no bend of it alone suits every state. %s".formatted(name, first));
    }

    private static String amount(Contact.Bend bend) {
        double least = bend.least();
        double most = least > 0 ? bend.toMm() : bend.fromMm();
        String way = least > 0 ? "away" : "closer";
        return Double.isInfinite(most)
                ? String.format(Locale.ROOT, "%s by %.2f mm or a little more", way, Math.abs(least))
                : String.format(Locale.ROOT, "%s by %.2f to %.2f mm", way, Math.abs(least), Math.abs(most));
    }

    private String elsewhere(Contact contact, double bend, List<String> again) {
        Stream<String> states = contact.seen().stream()
                .map(one -> one.band().touches() && one.band().holds(one.mm())
                        ? "%s, %s".formatted(one.state(), bend > 0 ? less : more)
                        : String.format(Locale.ROOT, "%s, %.2f mm", one.state(), Math.max(0, one.mm() + bend)));
        Stream<String> others = again.stream().map(other -> "try again " + other);
        return Stream.concat(states, others).collect(Collectors.joining("; "));
    }
}
