package hornwright.bench.fit;

import hornwright.bench.horn.Key;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.sheet.Remedy;
import hornwright.bench.sheet.SheetAnswer;
import hornwright.bench.sheet.SheetAsked;
import hornwright.bench.sheet.SheetLine;
import hornwright.bench.sheet.Told;
import hornwright.bench.sheet.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The key fitting sheet. Bands are common practice and rules of the shop. */
public final class FitSheet {
    private final SheetAsked ask;
    private final Reasons reasons = new Reasons();

    private FitSheet(SheetAsked ask) {
        this.ask = ask;
    }

    /** Every key in the order it goes on again, the order in which they are fitted. */
    public static SheetAnswer of(SheetAsked ask) {
        FitSheet sheet = new FitSheet(ask);
        List<SheetLine> lines = ask.keywork().keysInRemovalOrder().reversed().stream()
                .map(sheet::line)
                .toList();
        return new SheetAnswer(sheet.summary(lines), lines, List.of(), sheet.reasons.table());
    }

    private SheetLine line(Key key) {
        KeyFit fit = KeyFit.of(ask, key, reasons);
        if (fit.untried()) {
            return SheetLine.untried(key.id());
        }
        FitRemedies ways = new FitRemedies(ask.rules(), ask.keywork().rodOf(key));
        List<Told> numbers = new ArrayList<>();
        List<Remedy> remedies = new ArrayList<>();
        Verdict across = across(fit);
        Verdict along = along(fit.along());
        tell(numbers, "clearance", fit.across());
        tell(numbers, "at the cup edge", fit.edge());
        tell(numbers, "along the rod", fit.along());
        tell(numbers, "can be closed", fit.share());
        if (across == Verdict.ACT && fit.across() != null) {
            remedies.addAll(ways.across(fit.across().value(), fit.share()));
        }
        if (along == Verdict.ACT) {
            remedies.addAll(ways.along());
        }
        return new SheetLine(key.id(), worse(across, along), says(fit, across, along), numbers, remedies);
    }

    private Verdict across(KeyFit fit) {
        if (fit.across() == null) {
            return Verdict.UNTRIED;
        }
        boolean worn = fit.across().value() >= ask.rules().value("play.accept_mm");
        if (worn) {
            return Verdict.ACT;
        }
        boolean felt = fit.across().value() > ask.rules().value("fit.accept_mm");
        return felt || shows(fit) ? Verdict.MAY_STAY : Verdict.GOOD;
    }

    private boolean shows(KeyFit fit) {
        return fit.edge() != null && fit.edge().value() > ask.rules().value("fit.edge_mm");
    }

    private Verdict along(@Nullable PlannedNumber along) {
        if (along == null) {
            return Verdict.UNTRIED;
        }
        if (along.value() >= ask.rules().value("fit.end-worn_mm")) {
            return Verdict.ACT;
        }
        return along.value() > ask.rules().value("fit.end-accept_mm") ? Verdict.MAY_STAY : Verdict.GOOD;
    }

    private static Verdict worse(Verdict one, Verdict other) {
        return one.compareTo(other) > 0 ? one : other;
    }

    private String says(KeyFit fit, Verdict across, Verdict along) {
        List<String> parts = new ArrayList<>();
        if (across == Verdict.ACT) {
            parts.add(
                    fit.edge() == null
                            ? "play across the rod: fit it before its contacts are set"
                            : String.format(
                                    Locale.ROOT,
                                    "the pad wanders %.2f mm at the cup edge: fit before any pad, its pad numbers are"
                                            + " provisional",
                                    fit.edge().value()));
        }
        if (across == Verdict.MAY_STAY && shows(fit) && fit.edge() != null) {
            parts.add(String.format(
                    Locale.ROOT,
                    "%.2f mm at the cup edge: fit it if the pad will not land twice alike",
                    fit.edge().value()));
        }
        if (fit.share() != null
                && across == Verdict.ACT
                && fit.share().value() < ask.rules().value("fit.swedge-share")) {
            parts.add(String.format(
                    Locale.ROOT,
                    "only %.0f in 100 of the tube can be closed, so closing it would not last",
                    100 * fit.share().value()));
        }
        if (along == Verdict.ACT) {
            parts.add("play along the rod: take it out");
        }
        return String.join("; ", parts);
    }

    private static void tell(List<Told> numbers, String label, @Nullable PlannedNumber number) {
        if (number != null) {
            numbers.add(new Told(label, number));
        }
    }

    private String summary(List<SheetLine> lines) {
        List<String> waiting = lines.stream()
                .filter(line -> line.verdict() == Verdict.ACT)
                .map(line -> ask.keywork().keys().get(line.id()).name().display())
                .toList();
        long tried =
                lines.stream().filter(line -> line.verdict() != Verdict.UNTRIED).count();
        if (tried == 0) {
            return "No key felt yet. Feel them all and note only those with play.";
        }
        String felt = "%d of %d keys felt".formatted(tried, lines.size());
        return waiting.isEmpty()
                ? felt + "; none of them has to be fitted."
                : felt + "; to fit before any pad: " + waiting.stream().collect(Collectors.joining(", ")) + ".";
    }
}
