package hornwright.desk.web.view;

import hornwright.bench.horn.KeyGroup;
import hornwright.bench.plan.Missing;
import hornwright.bench.survey.ReadingKind;
import java.util.Arrays;
import java.util.List;

/**
 * One line that says what is missing and what comes next, with at most one button.
 *
 * @param brief what is next, without what it settles
 * @param go where the button leads; empty when there is nothing to press
 */
public record Next(String missing, String next, String brief, String go, String label) {
    public static Next of(OnBench bench) {
        List<Missing> missing = bench.plan().missing();
        if (untouched(bench)) {
            return new Next(
                    count(missing.size()),
                    "the first ten minutes, in four parts; each pays at once.",
                    "The first ten minutes",
                    bench.address("arrival"),
                    "Begin");
        }
        if (missing.isEmpty()) {
            return new Next("nothing the plan asks for.", "", "", "", "");
        }
        Missing first = missing.getFirst();
        MeasureSheet sheet = MeasureSheet.ofKind(first.kind());
        String settles = first.decides().isEmpty() ? "" : "; it settles " + String.join(", ", first.decides());
        return new Next(
                count(missing.size()),
                first.measure() + settles + ".",
                OnBench.capital(first.measure()),
                address(bench, first),
                sheet == null ? "Look at it" : "Measure it");
    }

    /** Nobody has said, seen or measured anything of it yet. */
    private static boolean untouched(OnBench bench) {
        return bench.job().readings().current().isEmpty()
                && bench.job().findings().places().isEmpty()
                && bench.job().findings().groups().isEmpty()
                && bench.job().agreedUse().isEmpty();
    }

    private static String count(int size) {
        return size == 1 ? "one thing." : size + " things.";
    }

    private static boolean isGroup(String word) {
        return Arrays.stream(KeyGroup.values()).anyMatch(group -> group.word().equals(word));
    }

    /** Where the answer is typed: a sheet of the grid, a group of the survey, or the work page for what is agreed. */
    public static String address(OnBench bench, Missing missing) {
        MeasureSheet sheet = MeasureSheet.ofKind(missing.kind());
        if (sheet != null) {
            return bench.address("measure") + "?sheet=" + sheet.word() + "#" + ElementId.row(missing.of());
        }
        if (missing.kind() == ReadingKind.TUNING) {
            return bench.address("sound") + "#play";
        }
        if (missing.kind() == null && isGroup(missing.of())) {
            return bench.address("survey") + "#group-" + missing.of();
        }
        return missing.kind() == null ? bench.address("work") : "";
    }
}
