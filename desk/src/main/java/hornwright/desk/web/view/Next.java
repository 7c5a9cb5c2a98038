package hornwright.desk.web.view;

import hornwright.bench.plan.Missing;
import java.util.List;

/**
 * One line that says what is missing and what comes next, with at most one button.
 *
 * @param go where the button leads; empty when there is nothing to press
 */
public record Next(String missing, String next, String go, String label) {
    public static Next of(OnBench bench) {
        List<Missing> missing = bench.plan().missing();
        if (missing.isEmpty()) {
            return new Next("Nothing that the plan asks for.", "", "", "");
        }
        Missing first = missing.getFirst();
        MeasureSheet sheet = MeasureSheet.ofKind(first.kind());
        String settles = first.decides().isEmpty() ? "" : "; it settles " + String.join(", ", first.decides());
        return new Next(
                count(missing.size()),
                first.measure() + settles + ".",
                sheet == null
                        ? ""
                        : bench.address("measure") + "?sheet=" + sheet.word() + "#" + MeasurePage.rowId(first.of()),
                "Measure it");
    }

    private static String count(int size) {
        return size == 1 ? "one reading." : size + " readings.";
    }
}
