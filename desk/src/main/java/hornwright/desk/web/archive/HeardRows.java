package hornwright.desk.web.archive;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Heard;
import hornwright.bench.archive.Resolution;
import hornwright.bench.archive.SearchLog;
import hornwright.bench.archive.YearRow;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Writes what other shops did with the same archive. */
final class HeardRows {
    private final Archive archive;
    private final UnaryOperator<String> named;

    /** @param named an item by its id, in words */
    HeardRows(Archive archive, UnaryOperator<String> named) {
        this.archive = archive;
        this.named = named;
    }

    List<ArchivePage.Told> all() {
        List<ArchivePage.Told> told = new ArrayList<>();
        for (Heard shop : archive.heard()) {
            String who = "shop " + shop.from();
            searches(shop)
                    .forEach((log, places) -> told.add(new ArchivePage.Told(
                            who,
                            "looked for %s in %s, %s (%d places); it counts here where you have not looked yourself"
                                    .formatted(
                                            log.terms(), log.where(), log.when().inWords(), places),
                            "",
                            "")));
            shop.resolutions().stream()
                    .filter(aside -> !isSetAside(aside.evidence()))
                    .forEach(aside -> told.add(aside(who, aside)));
            shop.years().forEach(row -> told.add(new ArchivePage.Told(who, year(row), "", "")));
        }
        return told;
    }

    private static Map<SearchLog, Integer> searches(Heard shop) {
        Map<SearchLog, Integer> logs = new LinkedHashMap<>();
        shop.searches().values().forEach(log -> logs.merge(log, 1, Integer::sum));
        return logs;
    }

    private boolean isSetAside(String evidence) {
        return archive.resolutions().stream().anyMatch(own -> own.evidence().equals(evidence));
    }

    private ArchivePage.Told aside(String who, Resolution aside) {
        return new ArchivePage.Told(
                who,
                "sets aside %s: %s (%s, %s)"
                        .formatted(
                                named.apply(aside.evidence()),
                                aside.reason(),
                                aside.who(),
                                aside.when().inWords()),
                aside.evidence(),
                aside.reason());
    }

    private String year(YearRow row) {
        boolean counts = archive.allYears().rows().contains(row);
        boolean same = archive.years().rows().stream()
                .anyMatch(own -> own.serial() == row.serial() && own.year().equals(row.year()));
        return "%s, by %s; %s"
                .formatted(
                        row.inWords(),
                        row.source(),
                        same
                                ? "so does your table"
                                : counts ? "read with your table" : "left out: it contradicts a row that is there");
    }
}
