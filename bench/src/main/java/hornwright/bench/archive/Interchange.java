package hornwright.bench.archive;

import hornwright.bench.horn.Voice;
import hornwright.engines.belief.Standing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * What fits what, graded by the same rules as what left the factory. The claim is "on horns from a to b this part goes
 * there", where a to b is what those who say so speak of; a serial between them is one grade lower, one beyond them at
 * most reported. Established needs, as everywhere, that somebody looked for more and wrote down where.
 */
public record Interchange(Archive archive) {
    private static final Comparator<Fits> BEST_FIRST = Comparator.comparing(
                    (Fits one) -> one.grading().grade())
            .thenComparing(one -> one.about().part());

    /** Everything said to go to this place, best first; a serial nobody has read is taken as one of those spoken of. */
    public List<Fits> at(Voice voice, String place, @Nullable Long serial) {
        return parts(one -> one.voice() == voice && one.places().contains(place)).stream()
                .map(items -> fits(place, items, serial))
                .sorted(BEST_FIRST)
                .toList();
    }

    /** Every part anybody speaks of, wherever it goes. */
    public List<Fits> all() {
        return parts(one -> true).stream()
                .map(items -> fits(items.getFirst().places().getFirst(), items, null))
                .toList();
    }

    /** Claims on one part in one voice, part by part, in the order they came. */
    private List<List<Fitting>> parts(Predicate<Fitting> asked) {
        List<List<Fitting>> parts = new ArrayList<>();
        archive.fittings().stream()
                .filter(asked)
                .forEach(one -> parts.stream()
                        .filter(part -> part.getFirst().isOf(one))
                        .findFirst()
                        .ifPresentOrElse(part -> part.add(one), () -> parts.add(new ArrayList<>(List.of(one)))));
        return parts;
    }

    private Fits fits(String place, List<Fitting> items, @Nullable Long serial) {
        List<Evidence> evidence = items.stream().map(Fitting::evidence).toList();
        List<Evidence> saying = evidence.stream()
                .filter(item -> item.stance() == Stance.SUPPORTS)
                .toList();
        SerialRange span = span(saying.isEmpty() ? evidence : saying);
        Claim claim = new Claim(span, place, items.getFirst().part());
        SearchLog search = evidence.stream()
                .map(Evidence::search)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
        Grading whole = new Ledger(claim, evidence, search, archive.resolutions()).grade();
        Standing standing = standing(saying, span, serial);
        return new Fits(items.getFirst(), span, standing, here(whole, standing, span), items);
    }

    private static SerialRange span(List<Evidence> items) {
        long from =
                items.stream().mapToLong(item -> item.serials().from()).min().orElseThrow();
        long to = items.stream().mapToLong(item -> item.serials().to()).max().orElseThrow();
        return new SerialRange(from, to);
    }

    private static Standing standing(List<Evidence> saying, SerialRange span, @Nullable Long serial) {
        if (serial == null || saying.stream().anyMatch(item -> item.serials().contains(serial))) {
            return Standing.OBSERVED;
        }
        return span.contains(serial) ? Standing.INTERPOLATED : Standing.EXTRAPOLATED;
    }

    private static Grading here(Grading whole, Standing standing, SerialRange span) {
        return switch (standing) {
            case OBSERVED -> whole;
            case INTERPOLATED ->
                whole.with(
                        whole.grade().lowered(),
                        "tried on others from " + span.inWords() + ", not on this one: one grade lower");
            case EXTRAPOLATED ->
                whole.with(
                        whole.grade().atMost(Grade.REPORTED), "tried on " + span.inWords() + " only: at most reported");
        };
    }
}
