package hornwright.bench.job;

import hornwright.bench.archive.Observation;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What was seen at places of a witness of the archive. */
@Kind(word = "observations-made")
public record ObservationsMade(List<Observation> observations) implements ArchiveEdit {
    public ObservationsMade {
        observations = List.copyOf(observations);
    }

    /** They stand on their witnesses too, so no witness is undone beneath them. */
    @Override
    public Fields fields() {
        Set<String> names = new LinkedHashSet<>();
        observations.forEach(seen -> {
            names.add("evidence." + seen.id());
            names.add("witness." + seen.witness());
        });
        return new Fields(names, false);
    }

    @Override
    public String inWords() {
        return observations.size() == 1
                ? "seen at %s of %s"
                        .formatted(
                                observations.getFirst().place(),
                                observations.getFirst().witness())
                : "%d observations".formatted(observations.size());
    }
}
