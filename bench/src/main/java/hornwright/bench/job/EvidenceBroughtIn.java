package hornwright.bench.job;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Statement;
import hornwright.bench.archive.Witness;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Horns and looks brought in from a table or from another shop, all at once, so that one undo takes them out again.
 *
 * @param from the name of the file or of the shop
 * @param archives what is new, maker by maker; a look may name a witness that is here already
 */
@Kind(word = "evidence-brought-in")
public record EvidenceBroughtIn(String from, List<Brought> archives) implements ArchiveEdit {
    public EvidenceBroughtIn {
        archives = List.copyOf(archives);
    }

    /** The new things of one maker. */
    public record Brought(
            String maker, List<Witness> witnesses, List<Observation> observations, List<Statement> statements) {
        public Brought {
            witnesses = List.copyOf(witnesses);
            observations = List.copyOf(observations);
            statements = List.copyOf(statements);
        }

        public static Brought of(Archive archive) {
            return new Brought(archive.maker(), archive.witnesses(), archive.observations(), archive.statements());
        }

        public int size() {
            return witnesses.size() + observations.size() + statements.size();
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
        }
        return new Fields(names, false);
    }

    @Override
    public String inWords() {
        int horns = archives.stream().mapToInt(one -> one.witnesses().size()).sum();
        int looks = archives.stream().mapToInt(one -> one.observations().size()).sum();
        return "brought in from %s: %d horns, %d looks".formatted(from, horns, looks);
    }
}
