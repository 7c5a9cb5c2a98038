package hornwright.desk.web.archive;

import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.archive.Course;
import hornwright.bench.archive.Family;
import hornwright.bench.archive.Kin;
import hornwright.desk.drawing.RulerScale;
import hornwright.desk.drawing.RulerSvg;
import hornwright.desk.drawing.RulerWords;
import hornwright.desk.use.ShowAsBuilt;
import hornwright.desk.web.view.GradeState;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes the ruler. */
public final class RulerRows {
    private static final int NUMBERS = 12;

    private final ShowAsBuilt.Sheet sheet;
    private final RulerScale scale;
    private final Function<String, String> evidence;

    /** @param evidence the address where everything said of a place stands */
    public RulerRows(ShowAsBuilt.Sheet sheet, Function<String, String> evidence) {
        this.sheet = sheet;
        this.scale = new RulerScale(sheet.shown(), NUMBERS);
        this.evidence = evidence;
    }

    public Ruler all() {
        return of(sheet.families());
    }

    /** The one band that tells a place; empty for a gap. */
    public Ruler telling(String place) {
        return of(sheet.families().stream()
                .filter(family ->
                        family.places().stream().anyMatch(one -> one.id().equals(place)))
                .toList());
    }

    private Ruler of(List<Family> families) {
        RulerSvg svg = new RulerSvg(scale, sheet.serial());
        List<Ruler.Row> rows = new ArrayList<>();
        for (Family family : families) {
            rows.add(row(svg, family, "band-" + rows.size()));
        }
        return new Ruler(RulerSvg.patterns(), svg.axis(), rows);
    }

    private Ruler.Row row(RulerSvg svg, Family family, String id) {
        Course course = family.course();
        AsBuiltAt built = family.built();
        Set<String> seconds = RulerSvg.seconds(course, scale);
        List<Ruler.Chip> chips = RulerWords.inOrder(course).stream()
                .map(word -> new Ruler.Chip(RulerSvg.swatch(word, seconds.contains(word)), word))
                .toList();
        return new Ruler.Row(
                RulerWords.title(family),
                RulerWords.where(sheet.keywork(), family),
                chips,
                besides(family),
                svg.band(course, id, RulerWords.told(family)),
                GradeState.of(built.grade()),
                RulerWords.chance(built),
                Objects.requireNonNullElse(built.material(), ""),
                RulerWords.ground(built),
                evidence.apply(family.places().getFirst().id()));
    }

    /** What else was seen, and of a place that few horns were looked at what its kind tells. */
    private String besides(Family family) {
        Kin kin = sheet.kin().get(family.places().getFirst().id());
        String kind = kin == null ? "" : kin.inWords();
        return Stream.of(RulerWords.besides(family.course()), kind)
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining("; "));
    }
}
