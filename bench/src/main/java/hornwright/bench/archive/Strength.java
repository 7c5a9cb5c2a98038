package hornwright.bench.archive;

import java.util.ArrayList;
import java.util.List;

/**
 * How much one item can carry, 0 to 3, looked up in a table and lowered step by step; the reasons say how.
 */
public record Strength(int value, List<String> reasons) {
    private static final String UNALTERED = " on an unaltered part";
    private static final String REPLACEABLE = " on a part that may be replaced";

    public Strength {
        reasons = List.copyOf(reasons);
    }

    public static Strength of(Evidence item, SerialRange claimed) {
        List<String> reasons = new ArrayList<>();
        int value = table(item, reasons);
        if (item.citation() == null || item.citation().isBlank()) {
            reasons.add("0: it cannot be found again");
            value = 0;
        }
        if (item.bearing() == Bearing.NEGATIVE && item.search() == null) {
            reasons.add("0: nothing found, but no log of the search");
            value = 0;
        }
        return new Strength(Math.max(0, value - lowered(item, claimed, reasons)), reasons);
    }

    private static int table(Evidence item, List<String> reasons) {
        boolean firstHand = item.hand() == Hand.FIRST;
        int value = switch (item.means()) {
            case Means.Examined seen -> examined(seen);
            case Means.Written paper -> paper.byMaker() && firstHand ? 3 : 2;
            case Means.Pictured picture -> picture.clearWithScale() ? 2 : 1;
            case Means.Told told -> told.recordedAndNamed() && firstHand ? 2 : 1;
            case Means.Published book -> book.citesItsSources() ? 1 : 0;
            case Means.Rumoured rumour -> 0;
        };
        reasons.add(value + ": " + said(item.means()) + ", " + item.hand().word());
        return value;
    }

    private static int examined(Means.Examined seen) {
        if (!seen.partUnaltered()) {
            return 1;
        }
        return seen.method() == Method.SEEN ? 2 : 3;
    }

    private static String said(Means means) {
        return switch (means) {
            case Means.Examined seen -> seen.method().word() + (seen.partUnaltered() ? UNALTERED : REPLACEABLE);
            case Means.Written paper -> paper.byMaker() ? "paper of the maker" : "paper of the time by others";
            case Means.Pictured picture -> picture.clearWithScale() ? "clear photograph with scale" : "photograph";
            case Means.Told told -> told.recordedAndNamed() ? "recorded and named testimony" : "testimony";
            case Means.Published book ->
                "literature " + (book.citesItsSources() ? "with citations" : "without citations");
            case Means.Rumoured rumour -> rumour.kind().word();
        };
    }

    private static int lowered(Evidence item, SerialRange claimed, List<String> reasons) {
        int before = reasons.size();
        if (item.bearing() == Bearing.INDIRECT) {
            reasons.add("one less: indirect");
        }
        if (item.interest() != Interest.NEUTRAL) {
            reasons.add("one less: " + item.interest().word());
        }
        if (item.integrity() != Integrity.ORIGINAL) {
            reasons.add("one less: " + item.integrity().word() + " object");
        }
        if (!claimed.contains(item.serials())) {
            reasons.add("one less: speaks of serials " + item.serials().inWords() + ", wider than the claim");
        }
        return reasons.size() - before;
    }
}
