package hornwright.desk.use;

import hornwright.bench.archive.Evidence;
import hornwright.bench.job.EvidenceBroughtIn.Brought;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What leaves as tables for anybody with a spreadsheet, by the name of their file. */
final class SharedTables {
    private SharedTables() {}

    static Map<String, String> of(List<Brought> archives) {
        Map<String, String> tables = new TreeMap<>();
        tables.put("horns.csv", horns(archives));
        tables.put("looks.csv", looks(archives));
        tables.put("statements.csv", statements(archives));
        tables.put("fits.csv", fits(archives));
        tables.put("searches.csv", searches(archives));
        tables.put("asides.csv", asides(archives));
        tables.put("years.csv", years(archives));
        return tables;
    }

    private static String horns(List<Brought> archives) {
        Table table = Table.of("id", "maker", "serial", "voice", "model", "built", "integrity");
        archives.forEach(one -> one.witnesses()
                .forEach(horn -> table.row(
                        horn.id(),
                        one.maker(),
                        horn.serial(),
                        horn.voice().word(),
                        horn.model(),
                        horn.built() == null ? null : horn.built().text(),
                        horn.integrity().word())));
        return table.toString();
    }

    private static String looks(List<Brought> archives) {
        Table table = Table.of(
                "id",
                "horn",
                "place",
                "material",
                "colour",
                "thickness_mm",
                "adhesive",
                "hand",
                "origin",
                "interest",
                "citation",
                "photo");
        archives.forEach(one -> one.observations()
                .forEach(look -> table.row(
                        look.id(),
                        look.witness(),
                        look.place(),
                        look.material(),
                        look.colour(),
                        look.thicknessAtLeastMm(),
                        look.adhesive(),
                        look.hand().word(),
                        look.origin().id(),
                        look.interest().word(),
                        look.citation(),
                        look.file())));
        return table.toString();
    }

    private static String statements(List<Brought> archives) {
        Table table = Table.of(
                "id",
                "maker",
                "voice",
                "place",
                "stance",
                "material",
                "from",
                "to",
                "kind",
                "origin",
                "citation",
                "photo");
        archives.forEach(one -> one.statements().forEach(said -> {
            Evidence by = said.evidence();
            table.row(
                    by.id(),
                    one.maker(),
                    said.voice().word(),
                    said.place(),
                    by.stance().word(),
                    said.material(),
                    by.serials().from(),
                    by.serials().to(),
                    by.kind().word(),
                    by.origin().id(),
                    by.citation(),
                    by.file());
        }));
        return table.toString();
    }

    private static String fits(List<Brought> archives) {
        Table table = Table.of(
                "id",
                "maker",
                "voice",
                "what",
                "part",
                "size_mm",
                "stance",
                "places",
                "from",
                "to",
                "kind",
                "origin",
                "citation",
                "photo");
        archives.forEach(one -> one.fittings().forEach(said -> {
            Evidence by = said.evidence();
            table.row(
                    by.id(),
                    one.maker(),
                    said.voice().word(),
                    said.kind().word(),
                    said.part(),
                    said.sizeMm(),
                    by.stance().word(),
                    String.join("; ", said.places()),
                    by.serials().from(),
                    by.serials().to(),
                    by.kind().word(),
                    by.origin().id(),
                    by.citation(),
                    by.file());
        }));
        return table.toString();
    }

    private static String searches(List<Brought> archives) {
        Table table = Table.of("by", "maker", "place", "where", "for", "when");
        archives.forEach(one -> one.heard()
                .forEach(shop -> shop.searches()
                        .forEach((place, log) -> table.row(
                                shop.from(),
                                one.maker(),
                                place,
                                log.where(),
                                log.terms(),
                                log.when().text()))));
        return table.toString();
    }

    private static String asides(List<Brought> archives) {
        Table table = Table.of("by", "maker", "item", "why", "who", "when");
        archives.forEach(one -> one.heard()
                .forEach(shop -> shop.resolutions()
                        .forEach(aside -> table.row(
                                shop.from(),
                                one.maker(),
                                aside.evidence(),
                                aside.reason(),
                                aside.who(),
                                aside.when().text()))));
        return table.toString();
    }

    private static String years(List<Brought> archives) {
        Table table = Table.of("by", "maker", "serial", "year", "source");
        archives.forEach(one -> one.heard()
                .forEach(shop -> shop.years()
                        .forEach(row -> table.row(
                                shop.from(),
                                one.maker(),
                                row.serial(),
                                row.year().text(),
                                row.source()))));
        return table.toString();
    }
}
