package hornwright.bench.body;

import hornwright.bench.plan.Reasons;
import hornwright.bench.sheet.SheetAnswer;
import hornwright.bench.sheet.SheetAsked;
import hornwright.bench.sheet.SheetLine;
import hornwright.bench.sheet.Verdict;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.ReadingKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What finish and stamps tell. A sign is a sign: the sheet counts them and says "likely", never that a finish is proved.
 */
public final class FinishSheet {
    /** Parts that carry an assembly number. */
    public static final List<String> STAMPED = List.of("body", "neck", "bell", "keys", "guards");

    private FinishSheet() {}

    public static SheetAnswer of(SheetAsked ask) {
        List<SheetLine> lines = new ArrayList<>();
        int seen = 0;
        int later = 0;
        for (FinishSign sign : FinishSign.values()) {
            Optional<Boolean> says = sign.later(ask.word(ReadingKind.FINISH_SIGN, FinishSign.SUBJECT, sign.point()));
            seen += says.isPresent() ? 1 : 0;
            later += says.orElse(false) ? 1 : 0;
            lines.add(says.map(is -> is
                            ? SheetLine.of(Pictured.id(sign), Verdict.MAY_STAY, "speaks for a later finish")
                            : SheetLine.of(Pictured.id(sign), Verdict.GOOD, ""))
                    .orElseGet(() -> SheetLine.untried(Pictured.id(sign))));
        }
        Map<String, String> stamps = stamps(ask);
        STAMPED.stream().map(part -> stamp(part, stamps)).forEach(lines::add);
        return new SheetAnswer(summary(seen, later, stamps), lines, List.of(), new Reasons().table());
    }

    private static Map<String, String> stamps(SheetAsked ask) {
        Map<String, String> stamps = new LinkedHashMap<>();
        for (String part : STAMPED) {
            ask.last(ReadingKind.STAMP, part, "").ifPresent(reading -> {
                if (reading.observed() instanceof Observed.Says says) {
                    stamps.put(part, says.word());
                }
            });
        }
        return stamps;
    }

    private static SheetLine stamp(String part, Map<String, String> stamps) {
        String mine = stamps.get(part);
        if (mine == null) {
            return SheetLine.untried(Pictured.stamp(part));
        }
        String body = stamps.get("body");
        boolean other = body != null && !body.equals(mine);
        return other
                ? SheetLine.of(
                        Pictured.stamp(part),
                        Verdict.ACT,
                        "cannot be original to this body, which is stamped " + body + ", unless explained")
                : SheetLine.of(Pictured.stamp(part), Verdict.GOOD, "");
    }

    private static String summary(int seen, int later, Map<String, String> stamps) {
        String finish = seen == 0
                ? "No sign looked at yet"
                : later == 0
                        ? "No sign of a later finish among the %d looked at".formatted(seen)
                        : later == 1
                                ? "One sign of a later finish among the %d looked at: possible".formatted(seen)
                                : "%d signs of a later finish among the %d looked at: likely".formatted(later, seen);
        long numbers = Stream.of(stamps.values().toArray()).distinct().count();
        return finish + (numbers > 1 ? "; the stamps do not agree." : numbers == 1 ? "; the stamps agree." : ".");
    }
}
