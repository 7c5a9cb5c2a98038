package hornwright.desk.paper;

import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.archive.Course;
import hornwright.bench.archive.Family;
import hornwright.bench.archive.SerialRange;
import hornwright.bench.archive.YearAnswer;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.desk.drawing.RulerPrint;
import hornwright.desk.drawing.RulerScale;
import hornwright.desk.drawing.RulerSvg;
import hornwright.desk.drawing.RulerWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes the as-built sheet. */
public final class AsBuiltWords {
    private static final double STRIP_MM = 96;
    private static final int NUMBERS = 6;
    private static final String TUBE = "Tube and neck";

    private final Keywork keywork;
    private final Map<String, AsBuiltAt> built;
    private final RulerScale scale;
    private final RulerPrint ruler;

    /** @param built every place of the keywork */
    public AsBuiltWords(Keywork keywork, Map<String, AsBuiltAt> built, long serial, SerialRange shown) {
        this.keywork = keywork;
        this.built = built;
        this.scale = new RulerScale(shown, NUMBERS);
        this.ruler = new RulerPrint(scale, serial, STRIP_MM);
    }

    /** @param year when such a number was made, by the shop's table */
    public AsBuiltSheet sheet(SheetHead head, List<Family> families, int witnesses, YearAnswer year) {
        List<AsBuiltSheet.Band> bands = new ArrayList<>();
        for (Family family : families) {
            bands.add(band(family, "r" + bands.size()));
        }
        long gaps = built.values().stream().filter(AsBuiltAt::isGap).count();
        String opening =
                "%d horns were looked at; %d of %d places are still gaps. A band is as thick in a material as that material is likely at that serial; the black line is this horn."
                        .formatted(witnesses, gaps, built.size());
        return new AsBuiltSheet(
                head.title(), head.line(), opening, year(year), Figure.of(ruler.axis()), bands, groups());
    }

    /** With its bracket and the rows it lies between; nothing where nobody has a table. */
    private static String year(YearAnswer year) {
        return switch (year) {
            case YearAnswer.Untold untold -> "";
            case YearAnswer.Found found ->
                "Made %s, by this shop's table of years: %s, by %s%s."
                        .formatted(
                                found.inWords(),
                                found.from().inWords(),
                                found.from().source(),
                                found.to().equals(found.from())
                                        ? ""
                                        : "; " + found.to().inWords() + ", by "
                                                + found.to().source());
            case YearAnswer.Outside outside -> "Year not known: this number lies " + outside.inWords() + ".";
            case YearAnswer.Backwards backwards -> "Year not told: " + backwards.inWords() + ".";
        };
    }

    private AsBuiltSheet.Band band(Family family, String id) {
        Course course = family.course();
        Set<String> seconds = RulerSvg.seconds(course, scale);
        List<AsBuiltSheet.Chip> chips = new ArrayList<>();
        for (String word : RulerWords.inOrder(course)) {
            String own = id + "-chip" + chips.size();
            chips.add(new AsBuiltSheet.Chip(Figure.of(RulerPrint.swatch(word, seconds.contains(word), own)), word));
        }
        String title = RulerWords.title(family);
        return new AsBuiltSheet.Band(
                title,
                RulerWords.where(keywork, family),
                chips,
                RulerWords.besides(course),
                Figure.of(ruler.band(course, id, RulerWords.told(family))),
                graded(family.built()),
                RulerWords.chance(family.built()) + " "
                        + Objects.requireNonNullElse(family.built().material(), ""),
                RulerWords.ground(family.built()));
    }

    private List<AsBuiltSheet.Group> groups() {
        Map<String, List<AsBuiltSheet.Line>> groups = new LinkedHashMap<>();
        Stream.concat(Stream.of(KeyGroup.values()).map(KeyGroup::title), Stream.of(TUBE))
                .forEach(title -> groups.put(title, new ArrayList<>()));
        for (Place place : keywork.places()) {
            String title = keywork.groupOf(place).map(KeyGroup::title).orElse(TUBE);
            Objects.requireNonNull(groups.get(title)).add(line(place));
        }
        return groups.entrySet().stream()
                .filter(group -> !group.getValue().isEmpty())
                .map(group -> group(group.getKey(), group.getValue()))
                .toList();
    }

    private static AsBuiltSheet.Group group(String title, List<AsBuiltSheet.Line> lines) {
        List<String> gaps = lines.stream()
                .filter(line -> line.material().isEmpty())
                .map(AsBuiltSheet.Line::name)
                .toList();
        return new AsBuiltSheet.Group(
                title, lines.stream().filter(line -> !line.material().isEmpty()).toList(), String.join(", ", gaps));
    }

    private AsBuiltSheet.Line line(Place place) {
        AsBuiltAt here = Objects.requireNonNull(built.get(place.id()));
        return new AsBuiltSheet.Line(
                RulerWords.capital(place.display()),
                Stream.of(here.material(), here.colour())
                        .filter(Objects::nonNull)
                        .collect(Collectors.joining(", ")),
                RulerWords.thickness(here.thicknessAtLeastMm()),
                RulerWords.made(here.shape(), here.cut(), here.adhesive()),
                graded(here));
    }

    private static String graded(AsBuiltAt here) {
        return here.grade().letter() + " · " + here.grade().word();
    }
}
