package hornwright.desk.web.sheets;

import hornwright.bench.neck.Check;
import hornwright.bench.neck.NeckSheet;
import hornwright.bench.survey.NeckPoint;
import hornwright.bench.survey.ReadingKind;
import hornwright.desk.web.sheets.SheetLayout.Field;
import hornwright.desk.web.sheets.SheetLayout.Line;
import hornwright.desk.web.sheets.SheetLayout.Section;
import java.util.List;
import java.util.stream.Stream;

/** The neck: its tenon in figures, what hands and air say of it, its cork. */
final class NeckLayout {
    private static final String NECK = "neck";

    private NeckLayout() {}

    static List<Section> sections() {
        Line tenon = new Line(
                NeckSheet.TENON,
                "Tenon",
                "",
                fields(
                        NeckPoint.TENON_UPPER,
                        NeckPoint.TENON_UPPER_ACROSS,
                        NeckPoint.TENON_LOWER,
                        NeckPoint.TENON_LOWER_ACROSS,
                        NeckPoint.RECEIVER,
                        NeckPoint.TENON_LENGTH),
                List.of());
        Line cork = new Line(
                NeckSheet.CORK,
                "Cork",
                "",
                fields(NeckPoint.BORE, NeckPoint.NECK_END, NeckPoint.CORK_BACK, NeckPoint.CORK_LENGTH),
                List.of());
        List<Line> checks = Stream.of(Check.values()).map(NeckLayout::check).toList();
        return List.of(
                new Section("Tenon and receiver", "", List.of(tenon)),
                new Section("Hands, eyes and air", "", checks),
                new Section(
                        "Cork",
                        "The mouthpiece that will be played, and the neck with its old cork off.",
                        List.of(cork)));
    }

    private static List<Field> fields(NeckPoint... points) {
        return Stream.of(points)
                .map(point -> Field.typed(ReadingKind.NECK, NECK, point.words(), point.label()))
                .toList();
    }

    private static Line check(Check check) {
        return new Line(
                check.point(),
                check.label(),
                "",
                List.of(Field.chosen(
                        ReadingKind.NECK_CHECK,
                        NECK,
                        check.point(),
                        "Found",
                        check.words().toArray(String[]::new))),
                List.of());
    }
}
