package hornwright.bench.archive;

import hornwright.bench.horn.Cut;
import hornwright.bench.horn.Form;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** How a material was used at a place: what most of the looks of an era say, the stronger looks counting more. */
record Detail(
        @Nullable String colour,
        @Nullable Double thicknessAtLeastMm,
        @Nullable String adhesive,
        @Nullable Form shape,
        @Nullable Cut cut) {

    static Detail of(List<PlaceArchive.Look> era, String material) {
        List<PlaceArchive.Look> same = era.stream()
                .filter(look -> look.seen().material().equals(material))
                .toList();
        return new Detail(
                most(same, Observation::colour),
                thickness(same),
                most(same, Observation::adhesive),
                most(same, Observation::shape),
                most(same, Observation::cut));
    }

    private static <T extends Comparable<T>> @Nullable T most(
            List<PlaceArchive.Look> looks, Function<Observation, @Nullable T> said) {
        Map<T, Integer> votes = new TreeMap<>();
        for (PlaceArchive.Look look : looks) {
            T value = said.apply(look.seen());
            if (value != null) {
                votes.merge(value, 1 + look.strength(), Integer::sum);
            }
        }
        return votes.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(null);
    }

    /** The middle one: each is a lower bound on its own horn, and one misread caliper must not set the figure. */
    private static @Nullable Double thickness(List<PlaceArchive.Look> looks) {
        List<Double> measured = looks.stream()
                .map(look -> look.seen().thicknessAtLeastMm())
                .filter(Objects::nonNull)
                .sorted()
                .toList();
        return measured.isEmpty() ? null : measured.get((measured.size() - 1) / 2);
    }
}
