package hornwright.desk.web.archive;

import hornwright.bench.archive.YearAnswer;
import hornwright.bench.archive.YearRow;
import hornwright.bench.archive.YearTable;
import hornwright.desk.drawing.Graph;
import hornwright.desk.drawing.Graph.At;
import hornwright.desk.drawing.Graph.Axis;
import hornwright.desk.web.view.OnBench;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/** Writes the table of years and what it says of a serial. */
public final class YearRows {
    private static final int STEPS = 120;
    private static final double DAYS = 365.2425;
    private static final int EPOCH = 1970;
    private static final String DIGITS = "\\d{1,9}";

    private final YearTable table;

    public YearRows(YearTable table) {
        this.table = table;
    }

    /** @param asked a serial as typed; empty when nobody asks */
    public Years years(String asked) {
        return new Years(
                table.rows().stream()
                        .map(row -> new Years.Row("" + row.serial(), row.year().inWords(), row.source()))
                        .toList(),
                table.rows().size() < 2 || table.backwards().isPresent() ? "" : graph(asked),
                table.backwards()
                        .map(against ->
                                OnBench.capital(against.inWords()) + ". Until one is taken out it tells no year.")
                        .orElse(""),
                asked,
                asked.isEmpty() ? null : asked(asked));
    }

    private Years.Answer asked(String typed) {
        return typed.matches(DIGITS)
                ? answer(table.at(Long.parseLong(typed)))
                : new Years.Answer("A serial is digits like 41207; this reads \"" + typed + "\"", List.of());
    }

    public static Years.Answer answer(YearAnswer answer) {
        return new Years.Answer(
                answer.inWords(),
                switch (answer) {
                    case YearAnswer.Found found -> because(found);
                    case YearAnswer.Outside outside ->
                        List.of(row(outside.nearest()), "The table is not carried on beyond its rows.");
                    case YearAnswer.Backwards against -> List.of(row(against.lower()), row(against.higher()));
                    case YearAnswer.Untold untold -> List.of("Nobody has entered a row of the table of years.");
                });
    }

    private static List<String> because(YearAnswer.Found found) {
        if (found.from().equals(found.to())) {
            return List.of(row(found.from()));
        }
        return List.of(
                row(found.from()),
                row(found.to()),
                "Between them the year is read off a smooth curve through the table that never turns back; the rows bound it, if numbers ran with the years.");
    }

    private static String row(YearRow row) {
        return "%s: %s.".formatted(row.inWords(), row.source());
    }

    private String graph(String asked) {
        List<YearRow> rows = table.rows();
        YearRow first = rows.getFirst();
        YearRow last = rows.getLast();
        Graph graph = new Graph(
                        "Years along the serials: %d rows from %s to %s"
                                .formatted(rows.size(), first.inWords(), last.inWords()),
                        new Axis("serial number", (double) first.serial(), (double) last.serial()),
                        new Axis("year", first.earliest(), last.latest() + 1.0))
                .beside(stairs(YearAnswer.Found::earliest))
                .beside(stairs(found -> found.latest() + 1))
                .curve(curve(first.serial(), last.serial()));
        rows.forEach(row -> graph.spot((double) row.serial(), year(row.middle()), ""));
        if (asked.matches(DIGITS) && table.at(Long.parseLong(asked)) instanceof YearAnswer.Found found) {
            graph.spot((double) found.serial(), year(table.middle(found.serial())), asked);
        }
        return graph.screen();
    }

    /** One side of the bracket: a step between every two rows. */
    private List<At> stairs(ToIntFunction<YearAnswer.Found> side) {
        List<At> stairs = new ArrayList<>();
        for (int i = 1; i < table.rows().size(); i++) {
            YearRow from = table.rows().get(i - 1);
            YearRow to = table.rows().get(i);
            int level = side.applyAsInt(new YearAnswer.Found(from.serial(), from.earliest(), from, to));
            stairs.add(new At((double) from.serial(), level));
            stairs.add(new At((double) to.serial(), level));
        }
        return stairs;
    }

    private List<At> curve(long from, long to) {
        List<At> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            long serial = from + (to - from) * i / STEPS;
            points.add(new At((double) serial, year(table.middle(serial))));
        }
        return points;
    }

    private static double year(double day) {
        return EPOCH + day / DAYS;
    }
}
