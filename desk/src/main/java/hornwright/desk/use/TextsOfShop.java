package hornwright.desk.use;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Statement;
import hornwright.bench.archive.Witness;
import hornwright.bench.job.Archives;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.stock.Stock;
import hornwright.desk.find.Text;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What stands written in the archive, on the shelf of goods and in the rules. */
final class TextsOfShop {
    private TextsOfShop() {}

    static List<Text> archive(Archives archives) {
        List<Text> texts = new ArrayList<>();
        archives.byMaker().values().forEach(archive -> add(texts, archive));
        return texts;
    }

    private static void add(List<Text> texts, Archive archive) {
        Map<String, Witness> witnesses =
                archive.witnesses().stream().collect(Collectors.toMap(Witness::id, Function.identity()));
        for (Observation seen : archive.observations()) {
            Witness witness = witnesses.get(seen.witness());
            if (witness != null) {
                texts.add(new Text(
                        Text.Sort.EVIDENCE,
                        "%s on %s %d, %s"
                                .formatted(
                                        name(seen.place()), witness.voice().word(), witness.serial(), archive.maker()),
                        TextsOfJob.joined(
                                seen.material(),
                                seen.colour(),
                                seen.means().kind().word(),
                                seen.citation()),
                        "/archive/place?place=%s&voice=%s&serial=%d"
                                .formatted(seen.place(), witness.voice().word(), witness.serial()),
                        witness.model() + " " + seen.adhesive()));
            }
        }
        for (Statement said : archive.statements()) {
            texts.add(new Text(
                    Text.Sort.EVIDENCE,
                    "%s on %s %s, %s"
                            .formatted(
                                    name(said.place()),
                                    said.voice().word(),
                                    said.evidence().serials().inWords(),
                                    archive.maker()),
                    TextsOfJob.joined(
                            said.material(),
                            said.evidence().kind().word(),
                            said.evidence().citation()),
                    "/archive/place?place=%s&voice=%s&serial=%d"
                            .formatted(
                                    said.place(),
                                    said.voice().word(),
                                    said.evidence().serials().from())));
        }
    }

    private static String name(String place) {
        String[] parts = place.split("\\.", 2);
        String words = parts.length < 2 ? place : parts[1] + " " + parts[0];
        return TextsOfJob.capital(
                words.replace("-flat", "♭").replace("-sharp", "♯").replace('-', ' '));
    }

    static List<Text> stock(Stock stock) {
        return stock.items().stream()
                .map(item -> new Text(
                        Text.Sort.GOODS,
                        TextsOfJob.capital(item.kind().word()) + ", " + item.material(),
                        TextsOfJob.joined(
                                item.diameterMm() == null ? "" : plain(item.diameterMm()) + " mm across",
                                item.thicknessMm() == null ? "" : plain(item.thicknessMm()) + " mm thick",
                                item.count() + " there"),
                        "/stock#" + item.id()))
                .toList();
    }

    static List<Text> rules(ShopRules rules) {
        return rules.all().stream()
                .map(rule -> new Text(
                        Text.Sort.RULE,
                        TextsOfJob.capital(rule.says()),
                        TextsOfJob.joined(plain(rule.value()) + " " + rule.unit(), rule.label()),
                        "/rules#" + rule.id(),
                        rule.id()))
                .toList();
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
