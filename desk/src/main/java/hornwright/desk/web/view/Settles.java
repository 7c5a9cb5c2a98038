package hornwright.desk.web.view;

import hornwright.bench.plan.Missing;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a reading that nobody has taken yet would decide, so that an empty field says why it should be filled. */
public final class Settles {
    private Settles() {}

    /** Of one field: "it would settle pad diameter, the order"; empty when the plan does not ask for it. */
    public static String field(OnBench bench, MeasureSheet.Column column, String of) {
        return said(bench.plan().missing().stream()
                .filter(missing ->
                        missing.kind() == column.kind() && missing.of().equals(of)));
    }

    /** Of the empty fields of a sheet together. */
    public static String sheet(OnBench bench, MeasureSheet sheet) {
        List<Missing> open = bench.plan().missing().stream()
                .filter(missing -> missing.kind() != null && MeasureSheet.ofKind(missing.kind()) == sheet)
                .toList();
        return said(open.stream());
    }

    private static String said(Stream<Missing> missing) {
        String all = missing.flatMap(one -> one.decides().stream()).distinct().collect(Collectors.joining(", "));
        return all.isEmpty() ? "" : "it would settle " + all;
    }
}
