package hornwright.desk.drawing;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Touch;
import hornwright.bench.horn.TouchKind;
import hornwright.desk.drawing.Mark.Group;
import hornwright.desk.drawing.PlaceFigures.Level;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The unrolled horn, drawn once from its keywork; the screen and the paper each take their own markup from it. */
public final class UnrolledHorn {
    private static final double LYING = 14.5;
    private static final double UPRIGHT = 19;

    private final Geometry geometry;
    private final List<Mark> marks;
    private final List<Label> lying;
    private final List<Label> upright;

    private UnrolledHorn(Geometry geometry) {
        this.geometry = geometry;
        this.marks = paint(geometry);
        Labelling labelling = new Labelling(geometry);
        this.lying = labelling.place(LYING, false);
        this.upright = labelling.place(UPRIGHT, true);
    }

    public static UnrolledHorn of(Keywork keywork) {
        return new UnrolledHorn(new Geometry(keywork));
    }

    private static List<Mark> paint(Geometry geometry) {
        Keywork keywork = geometry.keywork();
        KeyFigures keys = new KeyFigures(geometry);
        Rings rings = new Rings(geometry.sheet());
        PlaceFigures places = new PlaceFigures(geometry, rings);
        List<Mark> all = new ArrayList<>();
        all.add(rings.tin());
        all.add(new Group("fixed", handles(keywork, places, Level.TIN)));
        List<Mark> under = new ArrayList<>();
        keywork.links().forEach(link -> under.addAll(keys.link(link)));
        keywork.rods().forEach(rod -> under.addAll(keys.rod(rod)));
        keywork.keys().where(key -> reachesOver(geometry, key)).forEach(key -> under.addAll(keys.touch(key)));
        all.add(new Group("keys", under));
        all.add(new Group("guards", handles(keywork, places, Level.GUARD)));
        all.add(new Group("cups", handles(keywork, places, Level.CUP)));
        List<Mark> over = new ArrayList<>();
        keywork.keys().forEach(key -> over.addAll(keys.tails(key)));
        keywork.cups().forEach(cup -> over.addAll(keys.cupArm(cup)));
        keywork.keys().where(key -> !reachesOver(geometry, key)).forEach(key -> over.addAll(keys.touch(key)));
        all.add(new Group("keys", over));
        all.add(new Group("slips", handles(keywork, places, Level.KEY)));
        return all;
    }

    /** A long lever passes under the cups of its neighbours, so that every pad is seen. */
    private static boolean reachesOver(Geometry geometry, Key key) {
        Touch touch = key.touch();
        if (touch == null) {
            return false;
        }
        double far = geometry.hinge(key, touch.at().atMm()).distance(geometry.touch(key, touch));
        return touch.kind() == TouchKind.LEVER || far > 150;
    }

    private static List<Mark> handles(Keywork keywork, PlaceFigures figures, Level level) {
        List<Mark> marks = new ArrayList<>();
        for (Place place : keywork.places()) {
            if (figures.level(place) == level) {
                marks.add(figures.of(place));
            }
        }
        return marks;
    }

    List<Mark> marks() {
        return marks;
    }

    Keywork keywork() {
        return geometry.keywork();
    }

    public Sheet sheet() {
        return geometry.sheet();
    }

    /** Where the middle of a cup is drawn. */
    public Spot cup(Cup cup) {
        return geometry.cup(cup);
    }

    /** How large a cup is drawn. */
    public double radius(Cup cup) {
        return geometry.radius(cup);
    }

    /** The names of the cups with the sheet lying, neck at the left. */
    public List<Label> lyingLabels() {
        return lying;
    }

    /** The names of the cups with the sheet standing, neck at the top; the words are turned back by the page. */
    public List<Label> uprightLabels() {
        return upright;
    }

    /** The drawing for paper, standing, without the names of its cups: a picture. */
    public Print picture(Showing showing, double heightMm) {
        PrintSvg print = new PrintSvg(showing, "horn-", Sheet.HEIGHT, Sheet.WIDTH / heightMm, true, new Spot(0, 0));
        print.draw(marks);
        Print full = print.print(Sheet.HEIGHT, Sheet.WIDTH, "The horn unrolled, neck at the top, seen from in front");
        return new Print(full.shapes(), full.viewBox(), full.widthMm(), full.heightMm(), List.of(), full.says());
    }

    /** The drawing for paper, standing, its cups named beside them. */
    public Print print(Showing showing, double heightMm) {
        double unitsPerMm = Sheet.WIDTH / heightMm;
        PrintSvg print = new PrintSvg(showing, "horn-", Sheet.HEIGHT, unitsPerMm, true, new Spot(0, 0));
        print.draw(marks);
        for (Label label : upright) {
            if (label.far()) {
                print.add(
                        Ink.LEADER,
                        new Outline.Path("M" + Text.at(print.turned(label.leader())) + "L"
                                + Text.at(print.turned(label.centre()))));
            }
            Spot base = print.turned(label.centre()).plus(0, label.size() * 0.35);
            print.say(Mark.Type.NAME, label.text(), base, label.size(), PrintWord.Align.MIDDLE);
        }
        return print.print(Sheet.HEIGHT, Sheet.WIDTH, "The horn unrolled, neck at the top, seen from in front");
    }

    /** The drawing for a page, where a script knows what a touch means. */
    public String screen(Showing showing) {
        return new ScreenSvg(showing, "horn-").unrolled(this, Parts.whole());
    }

    /**
     * The drawing for a page, each place a link.
     *
     * @param part the keys that fill it; null for the whole horn
     */
    public String screen(Showing showing, @Nullable KeyGroup part, Function<Place, String> address) {
        Box box = part == null ? Parts.whole() : Parts.of(this, part);
        return new ScreenSvg(showing, "horn-", address).unrolled(this, box);
    }

    /** Where the keys of that group stand on the sheet: left, top, width and height. */
    public String part(KeyGroup group) {
        Box box = Parts.of(this, group);
        return "%s %s %s %s"
                .formatted(
                        Text.n(box.left()),
                        Text.n(box.top()),
                        Text.n(box.right() - box.left()),
                        Text.n(box.bottom() - box.top()));
    }
}
