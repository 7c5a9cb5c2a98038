package hornwright.bench.job;

import hornwright.bench.archive.Fitting;
import hornwright.bench.archive.Heard;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Statement;
import hornwright.bench.archive.Witness;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Horns and looks brought in from a table or from another shop, all at once, so that one undo takes them out again.
 *
 * @param from the name of the file or of the shop
 * @param archives what is new, maker by maker; a look may name a witness that is here already
 */
@Kind(word = "evidence-brought-in", version = 2)
public record EvidenceBroughtIn(String from, List<Brought> archives) implements ArchiveEdit {
    public EvidenceBroughtIn {
        archives = List.copyOf(archives);
    }

    /** The new things of one maker. */
    public record Brought(
            String maker,
            List<Witness> witnesses,
            List<Observation> observations,
            List<Statement> statements,
            List<Fitting> fittings,
            List<Heard> heard) {
        public Brought {
            witnesses = List.copyOf(witnesses);
            observations = List.copyOf(observations);
            statements = List.copyOf(statements);
            fittings = absent(fittings) ? List.of() : List.copyOf(fittings);
            heard = absent(heard) ? List.of() : List.copyOf(heard);
        }

        public Brought(
                String maker, List<Witness> witnesses, List<Observation> observations, List<Statement> statements) {
            this(maker, witnesses, observations, statements, List.of(), List.of());
        }

        /** True for what an older program never wrote down. */
        private static boolean absent(@Nullable Object part) {
            return part == null;
        }

        public int size() {
            int told = heard.stream().mapToInt(Heard::size).sum();
            return witnesses.size() + observations.size() + statements.size() + fittings.size() + told;
        }
    }

    @Override
    public Fields fields() {
        Set<String> names = new LinkedHashSet<>();
        for (Brought brought : archives) {
            brought.witnesses().forEach(witness -> names.add("witness." + witness.id()));
            brought.observations().forEach(seen -> {
                names.add("evidence." + seen.id());
                names.add("witness." + seen.witness());
            });
            brought.statements()
                    .forEach(said -> names.add("evidence." + said.evidence().id()));
            brought.fittings()
                    .forEach(said -> names.add("evidence." + said.evidence().id()));
            brought.heard().forEach(heard -> {
                String of = "heard." + heard.from() + ".";
                heard.searches().keySet().forEach(place -> names.add(of + "search." + place));
                heard.resolutions().forEach(aside -> names.add(of + "aside." + aside.evidence()));
                heard.years().forEach(row -> names.add(of + "year." + row.serial()));
            });
        }
        return new Fields(names, false);
    }

    @Override
    public String inWords() {
        int horns = archives.stream().mapToInt(one -> one.witnesses().size()).sum();
        int looks = archives.stream().mapToInt(one -> one.observations().size()).sum();
        int other = archives.stream().mapToInt(Brought::size).sum() - horns - looks;
        return "brought in from %s: %d horns, %d looks%s"
                .formatted(from, horns, looks, other == 0 ? "" : ", %d other entries".formatted(other));
    }
}
