package hornwright.bench.archive;

import hornwright.engines.belief.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** A place on which no horn has been looked at: a gap, or a claim that rests on papers and people alone. */
record Unseen(
        String place,
        List<Witness> witnesses,
        List<Statement> statements,
        List<Resolution> resolutions,
        @Nullable SearchLog search) {

    AsBuiltAt at(long serial) {
        @Nullable String best = null;
        Grading grading = new Grading(Grade.NOT_ASSESSED, 0, 0, 0, List.of("nobody has looked"), Grade.RULES);
        List<String> ids = List.of();
        for (String material : materials()) {
            List<Evidence> items = said(statements, serial, material);
            Grading here =
                    new Ledger(new Claim(SerialRange.one(serial), place, material), items, search, resolutions).grade();
            if (!items.isEmpty() && (best == null || here.grade().compareTo(grading.grade()) < 0)) {
                best = material;
                grading = here;
                ids = items.stream().map(Evidence::id).toList();
            }
        }
        Examined nobody = new Examined(witnesses.size(), 0, 0);
        return new AsBuiltAt(
                place,
                serial,
                best,
                Map.of(),
                grading,
                Standing.EXTRAPOLATED,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                nobody,
                ids);
    }

    private TreeSet<String> materials() {
        TreeSet<String> named = new TreeSet<>();
        statements.stream()
                .filter(s -> s.evidence().stance() == Stance.SUPPORTS)
                .forEach(s -> named.add(s.material()));
        return named;
    }

    /** Statements that cover a serial, as evidence on one material: speaking for another material is speaking against. */
    static List<Evidence> said(List<Statement> statements, long serial, String material) {
        List<Evidence> items = new ArrayList<>();
        for (Statement statement : statements) {
            Evidence item = statement.evidence();
            boolean same = statement.material().equals(material);
            if (item.serials().contains(serial) && (same || item.stance() == Stance.SUPPORTS)) {
                items.add(same ? item : item.against());
            }
        }
        return items;
    }
}
