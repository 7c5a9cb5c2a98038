package hornwright.desk.use;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Witness;
import hornwright.bench.job.ArchiveEdit;
import hornwright.bench.job.ConflictResolved;
import hornwright.bench.job.FittingAdded;
import hornwright.bench.job.ObservationsMade;
import hornwright.bench.job.SearchLogged;
import hornwright.bench.job.StatementAdded;
import hornwright.bench.job.WitnessAdded;
import hornwright.bench.job.YearRowPut;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** The edits that make an archive: what a bench would have entered, horn by horn. */
final class ArchiveEdits {
    private ArchiveEdits() {}

    static List<ArchiveEdit> of(Archive archive) {
        List<ArchiveEdit> edits = new ArrayList<>();
        for (Witness witness : archive.witnesses()) {
            edits.add(new WitnessAdded(witness));
            List<Observation> seen = archive.observations().stream()
                    .filter(look -> look.witness().equals(witness.id()))
                    .toList();
            if (!seen.isEmpty()) {
                edits.add(new ObservationsMade(seen));
            }
        }
        archive.statements().forEach(said -> edits.add(new StatementAdded(archive.maker(), said)));
        archive.fittings().forEach(fits -> edits.add(new FittingAdded(archive.maker(), fits)));
        archive.resolutions().forEach(aside -> edits.add(new ConflictResolved(archive.maker(), aside)));
        new TreeMap<>(archive.searches())
                .forEach((place, search) -> edits.add(new SearchLogged(archive.maker(), place, search)));
        archive.years().rows().forEach(row -> edits.add(new YearRowPut(archive.maker(), row)));
        return edits;
    }
}
