package hornwright.desk.drawing;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.Stop;
import hornwright.bench.horn.StopKind;
import hornwright.bench.horn.ToneHole;
import hornwright.bench.horn.Touch;
import hornwright.desk.drawing.Callouts.Note;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The numbers of a key in words, each with the spot it speaks of: the pattern of the maker, in millimetres. */
final class LeverNotes {
    private final Keywork keywork;
    private final Key key;
    private final LeverFrame frame;
    private final LeverFigure figure;

    LeverNotes(Keywork keywork, Key key, LeverFrame frame, LeverFigure figure) {
        this.keywork = keywork;
        this.key = key;
        this.frame = frame;
        this.figure = figure;
    }

    /** What is said on the side of the cup. */
    List<Note> right() {
        List<Note> notes = new ArrayList<>();
        keywork.cupOf(key).ifPresent(cup -> {
            ToneHole hole = keywork.holeOf(cup);
            double rim = hole.chimneyMm();
            double half = cup.insideDiameterMm() / 2;
            double top = rim + cup.parallelGapMm() + cup.depthMm();
            notes.add(note(
                    frame.opened(frame.byHole(half, rim + cup.parallelGapMm()), figure.openRad()),
                    "open",
                    mm(cup.heightFrontMm()) + " at the front edge",
                    mm(cup.heightCentreMm(hole)) + " at the centre"));
            notes.add(note(
                    frame.byHole(half, top),
                    "cup",
                    "inside " + mm(cup.insideDiameterMm()) + ", deep " + mm(cup.depthMm()),
                    "arm " + mm(cup.armMm())));
            notes.add(note(
                    frame.byHole(half - 1, rim + 0.8),
                    "pad",
                    mm(cup.pad().diameterMm()) + " × " + mm(cup.pad().thicknessMm()),
                    cup.adhesive().material() + " " + mm(cup.adhesive().thicknessMm())));
            notes.add(note(
                    frame.byHole(hole.radiusMm(), rim * 0.4),
                    "hole and rim",
                    mm(hole.diameterMm()) + ", chimney " + mm(rim),
                    hole.rim().word() + ", wall " + mm(hole.rimWallMm())));
        });
        return notes;
    }

    /** What is said on the side of the hinge. */
    List<Note> left() {
        List<Note> notes = new ArrayList<>();
        Touch touch = key.touch();
        if (touch != null) {
            notes.add(note(
                    figure.touchSpot(touch),
                    touch.kind().word() + ", " + (touch.closes() ? "closes" : "opens"),
                    "arm " + mm(touch.armMm()),
                    number(touch.forceN(), 2) + " N"));
        }
        notes.add(note(
                frame.hinge(),
                "axis",
                "rod " + mm(keywork.rodOf(key).diameterMm()) + ", tube "
                        + mm(key.tube().outerMm()),
                mm(key.axis().heightAboveBodyMm()) + " above the body"));
        key.stops().forEach(stop -> notes.add(stop(stop)));
        contacts().forEach(notes::add);
        return notes;
    }

    private Note stop(Stop stop) {
        Spot at = stop.kind() == StopKind.GUARD
                ? keywork.cupOf(key)
                        .map(cup -> frame.byHole(-cup.insideDiameterMm() / 2, top(cup) + stop.clearanceMm()))
                        .orElse(frame.hinge())
                : frame.foot(stop);
        List<String> layers = stop.layers().stream()
                .map(layer -> layer.material() + " " + mm(layer.thicknessMm()))
                .toList();
        List<String> lines = new ArrayList<>(
                List.of(stop.kind().word(), "arm " + mm(stop.armMm()), "clearance " + mm(stop.clearanceMm())));
        lines.addAll(layers);
        return new Note(figure.units(at), lines);
    }

    private double top(Cup cup) {
        return keywork.holeOf(cup).chimneyMm() + cup.parallelGapMm() + cup.depthMm();
    }

    private List<Note> contacts() {
        List<Note> notes = new ArrayList<>();
        for (Link link : keywork.linksFrom(key)) {
            notes.add(contact(link.kind().verb() + " " + nameOf(link.follower()), link.driverArmMm(), link));
        }
        for (Link link : keywork.linksTo(key)) {
            notes.add(contact("met by " + nameOf(link.driver()), link.followerArmMm(), link));
        }
        return notes;
    }

    private String nameOf(String id) {
        return keywork.keys().get(id).name().display();
    }

    private Note contact(String words, double armMm, Link link) {
        Spot at = figure.contactSpot(armMm, link.kind().sense() > 0);
        List<String> lines = new ArrayList<>(List.of(words, "arm " + mm(armMm)));
        link.layers().forEach(layer -> lines.add(layer.material() + " " + mm(layer.thicknessMm())));
        return new Note(figure.units(at), lines);
    }

    private Note note(Spot mm, String... lines) {
        return new Note(figure.units(mm), List.of(lines));
    }

    static String mm(double value) {
        return number(value, value < 10 && Math.abs(value * 10 - Math.rint(value * 10)) > 0.05 ? 2 : 1) + " mm";
    }

    private static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
