package hornwright.desk.drawing;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Direction;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.horn.Position;
import hornwright.bench.horn.Rod;
import hornwright.bench.horn.Touch;
import hornwright.bench.horn.TouchKind;
import hornwright.desk.drawing.Mark.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The metal of the keys: rods with their tubes and posts, cup arms, tails, touches and the arms of links. */
final class KeyFigures {
    private static final double TUBE = 4.8;
    /** A link whose parts lie further apart than this is drawn as a broken line. */
    private static final double REACH = 130;

    private static final Pattern NOTE = Pattern.compile("\\b([A-G][♯♭]?)(?=\\s|$)");

    private final Geometry geometry;

    KeyFigures(Geometry geometry) {
        this.geometry = geometry;
    }

    /** A hinge: steel from post to post, over it a tube for each key with a joint between neighbours. */
    List<Mark> rod(Rod rod) {
        List<Mark> marks = new ArrayList<>();
        double angle = geometry.rodAngle(rod);
        if (rod.direction() == Direction.ACROSS || rod.toMm() - rod.fromMm() < 0.5) {
            across(rod, marks);
        } else {
            List<Spot> line = geometry.sheet().line(rod.fromMm(), rod.toMm(), angle);
            for (int i = 1; i < line.size(); i++) {
                marks.add(Brass.tube(Ink.STEEL, line.get(i - 1), line.get(i), 2.4));
            }
            tubes(rod, angle, marks);
        }
        rod.posts().forEach(post -> {
            double turned = Wrapping.near(post.at().angleDeg(), angle);
            marks.addAll(Brass.post(geometry.sheet().spot(post.at().atMm(), turned)));
        });
        return marks;
    }

    private void across(Rod rod, List<Mark> marks) {
        if (rod.posts().size() >= 2) {
            Spot from = geometry.sheet()
                    .spot(
                            rod.posts().getFirst().at().atMm(),
                            rod.posts().getFirst().at().angleDeg());
            Spot to = geometry.sheet()
                    .spot(
                            rod.posts().getLast().at().atMm(),
                            rod.posts().getLast().at().angleDeg());
            marks.add(Brass.tube(Ink.STEEL, from, to, 2.4));
            marks.add(Brass.tube(Ink.TUBE, from.between(to, 0.16), from.between(to, 0.84), TUBE));
        }
    }

    private void tubes(Rod rod, double angle, List<Mark> marks) {
        List<Key> keys = geometry.keywork().keysOn(rod);
        double margin = Math.min(4, (rod.toMm() - rod.fromMm()) / 5);
        double from = rod.fromMm() + margin;
        for (int i = 0; i < keys.size(); i++) {
            double to = i + 1 < keys.size()
                    ? (keys.get(i).axis().atMm() + keys.get(i + 1).axis().atMm()) / 2
                    : rod.toMm() - margin;
            List<Spot> line = geometry.sheet().line(from + 0.4, Math.max(from + 0.8, to - 0.4), angle);
            for (int j = 1; j < line.size(); j++) {
                marks.add(Brass.tube(Ink.TUBE, line.get(j - 1), line.get(j), TUBE));
            }
            from = to;
        }
    }

    /** The arm from the hinge to the middle of the cup. */
    List<Mark> cupArm(Cup cup) {
        Key key = geometry.keywork().keyOf(cup);
        Spot from = geometry.hinge(key, key.axis().atMm());
        Spot to = geometry.cup(cup);
        double broad = 4.5 + geometry.radius(cup) * 0.19;
        double bend = Math.min(5, from.distance(to) * 0.04);
        return List.of(Brass.arm(from, to, broad, 3.8, bend));
    }

    /** The tails that end in a foot. A felt in a guard needs none. */
    List<Mark> tails(Key key) {
        List<Mark> marks = new ArrayList<>();
        for (Place place : geometry.keywork().placesOf(key)) {
            if (place.kind() == PlaceKind.FOOT) {
                Spot to = geometry.place(place);
                marks.add(Brass.arm(geometry.hinge(key, place.at().atMm()), to, 5.6, 4.4, 0));
            }
        }
        return marks;
    }

    List<Mark> touch(Key key) {
        Touch touch = key.touch();
        if (touch == null) {
            return List.of();
        }
        Spot at = geometry.touch(key, touch);
        Spot from = geometry.hinge(key, touch.at().atMm());
        List<Mark> marks = new ArrayList<>();
        if (touch.kind() == TouchKind.LEVER && key.group() == KeyGroup.PALM) {
            Spot tip = at.along(from.bearing(at), 22);
            Spot root = at.along(at.bearing(from), Math.min(20, at.distance(from) * 0.6));
            marks.add(Brass.arm(from, root, 6, 3.6, 2));
            marks.addAll(Brass.leaf(root, tip, 15));
            return marks;
        }
        double angle = geometry.angle(key, touch.at());
        double rod = geometry.rodAngle(geometry.keywork().rodOf(key));
        if (Math.abs(angle - rod) > 180) {
            marks.addAll(over(key, touch.at(), angle, at));
        } else {
            marks.add(Brass.arm(from, at, 6, 4.6, 0));
        }
        marks.addAll(plate(key, touch, at));
        return marks;
    }

    private List<Mark> plate(Key key, Touch touch, Spot at) {
        return switch (touch.kind()) {
            case PEARL -> List.of(Brass.circle(Ink.TOUCH, at, geometry.pearlRadius(touch)));
            case THUMB ->
                List.of(
                        Brass.slab(Ink.TOUCH, at, 26, 13, 6, 0),
                        Brass.line(Ink.SHINE, List.of(at.plus(-8, -2), at.plus(8, -2))));
            case ROLLER -> named(key, at, width(at, 32), 18, 6);
            case SPATULA -> named(key, at, width(at, 30), 30, 5);
            case LEVER -> named(key, at, width(at, 30), 15, 7.5);
        };
    }

    /** Plates side by side share the room between them. */
    private double width(Spot at, double wanted) {
        double nearest = geometry.touches().stream()
                .filter(other -> Math.abs(other.y() - at.y()) < 24)
                .mapToDouble(other -> Math.abs(other.x() - at.x()))
                .filter(d -> d > 0.1)
                .min()
                .orElse(wanted);
        return Math.max(12, Math.min(wanted, nearest - 1.5));
    }

    private List<Mark> named(Key key, Spot at, double width, double height, double corner) {
        List<Mark> marks = new ArrayList<>();
        marks.add(Brass.slab(Ink.TOUCH, at, width, height, Math.min(corner, width / 2.2), 0));
        Matcher note = NOTE.matcher(key.name().display());
        if (note.find()) {
            marks.add(Words.centred(Mark.Type.ON_TOUCH, note.group(1), at.plus(0, 3.4), 9.5));
        }
        return marks;
    }

    /** Both parts of a link, from their hinges to where they meet; over the back of the horn only their ends. */
    List<Mark> link(Link link) {
        Key driver = geometry.keywork().keys().get(link.driver());
        Key follower = geometry.keywork().keys().get(link.follower());
        Spot meet = geometry.byKey(driver, link.at());
        double here = geometry.angle(driver, link.at());
        List<Mark> marks = new ArrayList<>(over(driver, link.at(), here, meet));
        marks.addAll(over(follower, link.at(), here, meet));
        return marks;
    }

    /** From the hinge of a key to a spot: the near way as an arm, the way round the back as two broken ends. */
    private List<Mark> over(Key key, Position at, double met, Spot to) {
        Rod rod = geometry.keywork().rodOf(key);
        double there = geometry.rodAngle(rod);
        double turn = Wrapping.near(there, met) - there;
        if (Math.abs(turn) < 1) {
            return reach(geometry.hinge(key, at.atMm()), to);
        }
        double hinge = Math.clamp(at.atMm(), rod.fromMm(), rod.toMm());
        return List.of(crossing(at.atMm(), met, hinge, there + turn), crossing(hinge, there, at.atMm(), met - turn));
    }

    /** The part of a line round the back that lies on this side of the cut. */
    private Mark crossing(double fromMm, double fromDeg, double toMm, double toDeg) {
        double edge = Math.copySign(Math.max(186, Math.abs(fromDeg) + 6), toDeg - fromDeg);
        double share = Math.clamp((edge - fromDeg) / (toDeg - fromDeg), 0.02, 1);
        Spot from = geometry.sheet().spot(fromMm, fromDeg);
        Spot to = geometry.sheet().spot(fromMm + share * (toMm - fromMm), fromDeg + share * (toDeg - fromDeg));
        return Brass.line(Ink.CROSSING, List.of(from, to));
    }

    private static List<Mark> reach(Spot hinge, Spot meet) {
        double far = hinge.distance(meet);
        if (far < 4) {
            return List.of();
        }
        if (far > REACH) {
            return List.of(Brass.line(Ink.CROSSING, List.of(meet, hinge)));
        }
        return List.of(Brass.arm(hinge, meet, 4.6, 3.2, Math.min(6, far * 0.05)));
    }
}
