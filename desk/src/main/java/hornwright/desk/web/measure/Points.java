package hornwright.desk.web.measure;

import hornwright.bench.horn.Cup;
import hornwright.bench.plan.NumberName;
import hornwright.bench.survey.Reading;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.MeasureSheet;
import hornwright.desk.web.view.Miniature;
import hornwright.desk.web.view.OnBench;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The points of a sheet one after another, as the hand goes over the horn. */
public final class Points {
    private final OnBench bench;
    private final MeasureSheet sheet;
    private final List<Point> points = new ArrayList<>();

    /** One point: what is measured, and on what. */
    public record Point(String of, String where, MeasureSheet.Column column, List<Figure> follows) {
        /** As the grid calls it: {@code r/KIND/of/point}. */
        public String name() {
            return "r/%s/%s/%s".formatted(column.kind().name(), of, column.point());
        }
    }

    public Points(OnBench bench, MeasureSheet sheet) {
        this.bench = bench;
        this.sheet = sheet;
        for (Subject subject : Subjects.of(bench, sheet)) {
            List<Figure> follows = new ArrayList<>();
            for (NumberName name : sheet.results()) {
                subject.number()
                        .apply(name)
                        .ifPresent(number -> follows.add(
                                Figure.of(bench.id(), name, number).withLabel(OnBench.capital(name.label()))));
            }
            for (MeasureSheet.Column column : sheet.columns()) {
                points.add(new Point(subject.id(), subject.name(), column, follows));
            }
        }
    }

    public MeasureSheet sheet() {
        return sheet;
    }

    public int count() {
        return points.size();
    }

    public Point at(int n) {
        return points.get(Math.floorMod(n, points.size()));
    }

    /** The first point nobody has read, else the first of all. */
    public int open() {
        for (int n = 0; n < points.size(); n++) {
            if (reading(points.get(n)).isEmpty()) {
                return n;
            }
        }
        return 0;
    }

    /** Which point that reading was taken at; empty when it is of another sheet. */
    public Optional<Integer> of(Reading reading) {
        for (int n = 0; n < points.size(); n++) {
            Point point = points.get(n);
            if (point.column().kind() == reading.kind()
                    && point.of().equals(reading.of())
                    && point.column().point().equals(reading.point())) {
                return Optional.of(n);
            }
        }
        return Optional.empty();
    }

    public Optional<Reading> reading(Point point) {
        return bench.job().readings().current().stream()
                .filter(reading -> reading.kind() == point.column().kind()
                        && reading.of().equals(point.of())
                        && reading.point().equals(point.column().point()))
                .reduce((first, second) -> second);
    }

    /** The horn with only the cup filled that is in hand. */
    public Miniature figure(Point point) {
        return Miniature.pointing(bench.keywork(), cup -> isOf(cup, point), "Where it is measured: " + point.where());
    }

    private static boolean isOf(Cup cup, Point point) {
        return cup.id().equals(point.of())
                || cup.hole().equals(point.of())
                || cup.key().equals(point.of());
    }
}
