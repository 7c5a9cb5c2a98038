package hornwright.bench.seal;

import hornwright.bench.horn.ById;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What was found at each site, and the total when it was measured.
 *
 * @param found by site; a site that is not there has not been tried
 * @param totalMlPerS flow of the whole horn, keys shut; null when nobody has measured it
 * @param totalAllowedMlPerS what the shop lets pass as a total
 */
public record LeakSheet(
        ById<LeakSite> sites,
        Map<String, Found> found,
        @Nullable Double totalMlPerS,
        double totalAllowedMlPerS) {
    /** What a site showed. */
    public enum Found {
        SEALS("seals"),
        LEAKS("leaks");

        private final String word;

        Found(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** What may be said of the horn. */
    public enum Verdict {
        SEALS,
        LEAKS,
        NOT_KNOWN
    }

    public LeakSheet {
        found = Map.copyOf(found);
        for (String site : found.keySet()) {
            if (!sites.contains(site)) {
                throw new IllegalArgumentException(site + " is no leak site of this horn");
            }
        }
    }

    public List<LeakSite> untried() {
        return sites.where(site -> !found.containsKey(site.id()));
    }

    public List<LeakSite> leaking() {
        return sites.where(site -> found.get(site.id()) == Found.LEAKS);
    }

    /** A horn seals only when every site was tried and seals, and the total, if there is one, agrees. */
    public Verdict verdict() {
        if (!leaking().isEmpty() || totalIsTooMuch()) {
            return Verdict.LEAKS;
        }
        return untried().isEmpty() ? Verdict.SEALS : Verdict.NOT_KNOWN;
    }

    /** The verdict in a sentence, which never says more than was tried. */
    public String inWords() {
        List<String> parts = new ArrayList<>();
        if (!leaking().isEmpty()) {
            parts.add("leaks at " + names(leaking()));
        }
        if (totalIsTooMuch() && leaking().isEmpty()) {
            parts.add("the total of %.1f mL/s is over %.1f, and no site tried so far accounts for it"
                    .formatted(totalMlPerS, totalAllowedMlPerS));
        }
        int left = untried().size();
        if (left > 0) {
            parts.add(left == 1 ? "one site is untried: " + names(untried()) : left + " sites are untried");
        }
        return parts.isEmpty() ? "every site was tried and seals" : String.join("; ", parts);
    }

    /** Untried sites by the way they are tried, so that one set-up serves them all. */
    public Map<LeakSite.Way, List<LeakSite>> nextByWay() {
        Map<LeakSite.Way, List<LeakSite>> byWay = new EnumMap<>(LeakSite.Way.class);
        untried()
                .forEach(site -> byWay.computeIfAbsent(site.way(), none -> new ArrayList<>())
                        .add(site));
        return byWay;
    }

    private boolean totalIsTooMuch() {
        return totalMlPerS != null && totalMlPerS > totalAllowedMlPerS;
    }

    private static String names(List<LeakSite> sites) {
        return String.join(", ", sites.stream().map(LeakSite::name).toList());
    }
}
