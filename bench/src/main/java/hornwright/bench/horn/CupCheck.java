package hornwright.bench.horn;

/** Holes lie in the tube, and each cup can cover its hole. */
final class CupCheck {
    /** A height in a file is rounded to 0.01 mm and an arm to 0.1 mm; 0.05 mm is more than both can make. */
    private static final double HEIGHT_TOLERANCE_MM = 0.05;

    private CupCheck() {}

    static void look(Keywork keywork, Flaws flaws) {
        for (int i = 0; i < keywork.holes().size(); i++) {
            hole(keywork.tube(), keywork.holes().list().get(i), "/holes/" + i, flaws);
        }
        for (int i = 0; i < keywork.cups().size(); i++) {
            Cup cup = keywork.cups().list().get(i);
            cup(cup, keywork.holeOf(cup), "/cups/" + i, flaws);
            height(cup, keywork.holeOf(cup), keywork.keyOf(cup), "/cups/" + i, flaws);
        }
    }

    private static void hole(Tube tube, ToneHole hole, String at, Flaws flaws) {
        double place = hole.at().atMm();
        if (place >= tube.lengthMm()) {
            flaws.add(at + "/at_mm", "this hole lies beyond the bell rim", "less than " + tube.lengthMm());
            return;
        }
        double bore = tube.diameterMm(place);
        if (hole.diameterMm() >= bore) {
            flaws.add(
                    at + "/diameter_mm",
                    "the hole is wider than the bore: " + hole.diameterMm() + " mm in " + Numbers.mm(bore) + " mm",
                    "less than " + Numbers.mm(bore));
        }
    }

    private static void cup(Cup cup, ToneHole hole, String at, Flaws flaws) {
        double rim = hole.diameterMm() + 2 * hole.rimWallMm();
        if (cup.pad().diameterMm() < rim) {
            flaws.add(at + "/pad/diameter_mm", "the pad does not reach over the rim", "at least " + Numbers.mm(rim));
        }
        if (cup.pad().diameterMm() > cup.insideDiameterMm() + 1) {
            flaws.add(
                    at + "/pad/diameter_mm",
                    "the pad does not go into the cup",
                    "at most " + Numbers.mm(cup.insideDiameterMm() + 1));
        }
        if (cup.armMm() <= hole.radiusMm()) {
            flaws.add(
                    at + "/arm_mm",
                    "the hinge would stand inside the hole",
                    "more than " + Numbers.mm(hole.radiusMm()));
        }
        if (cup.parallelGapMm() < 0) {
            flaws.add(
                    at + "/depth_mm",
                    "the cup rim would stand below the hole rim by " + Numbers.mm(-cup.parallelGapMm()) + " mm",
                    "adhesive + pad at least cup depth + seat depth");
        }
    }

    private static void height(Cup cup, ToneHole hole, Key key, String at, Flaws flaws) {
        if (cup.rest() != key.rest()) {
            flaws.add(
                    at + "/rest",
                    "its key rests " + key.rest().word(),
                    "\"" + key.rest().word() + "\"");
        }
        double open = Math.max(key.restRotationRad(), key.pressedRotationRad());
        double height = open * (cup.armMm() + hole.radiusMm());
        if (Math.abs(height - cup.heightFrontMm()) > HEIGHT_TOLERANCE_MM) {
            flaws.add(
                    at + "/heightFront_mm",
                    "the open key stands at " + open + " rad, which makes " + Numbers.mm(height)
                            + " mm at the front edge",
                    Numbers.mm(height));
        }
    }
}
