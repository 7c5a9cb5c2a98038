package hornwright.bench.horn;

/** With nothing pressed no contact is forced into another, and springs leave the keys where they are said to rest. */
final class MotionCheck {
    /** Rotations in a file are rounded to a millionth of a radian; no arm makes a thousandth of a millimetre of that. */
    private static final double ROUNDING_MM = 1e-3;

    private MotionCheck() {}

    static void look(Keywork keywork, Flaws flaws) {
        for (int i = 0; i < keywork.keys().size(); i++) {
            key(keywork.keys().list().get(i), "/keys/" + i, flaws);
        }
        for (int i = 0; i < keywork.links().size(); i++) {
            Link link = keywork.links().list().get(i);
            double gap = keywork.restGapMm(link);
            if (gap < -ROUNDING_MM) {
                flaws.add(
                        "/links/" + i + "/space_mm",
                        "with nothing pressed this link jams by " + Numbers.mm(-gap) + " mm",
                        "at least " + Numbers.mm(link.spaceMm() - gap));
            }
        }
    }

    private static void key(Key key, String at, Flaws flaws) {
        boolean open = key.restRotationRad() > 0;
        if (open != (key.rest() == Rest.OPEN) || key.restRotationRad() < 0) {
            flaws.add(
                    at + "/restRotation_rad",
                    "the key rests " + key.rest().word() + " but stands at " + key.restRotationRad() + " rad",
                    key.rest() == Rest.OPEN ? "more than 0" : "0");
        }
        Touch touch = key.touch();
        boolean goesDown = key.pressedRotationRad() < key.restRotationRad();
        if (touch != null && goesDown != touch.closes()) {
            flaws.add(
                    at + "/touch/closes",
                    "pressing takes the key from " + key.restRotationRad() + " to " + key.pressedRotationRad() + " rad",
                    "\"closes\": " + goesDown);
        }
        for (Stop stop : key.stops()) {
            double gap = stop.gapMm(key.restRotationRad());
            if (gap < -ROUNDING_MM * 10) {
                flaws.add(
                        at + (stop.limits() == Limits.OPENING ? "/stop" : "/closingStop") + "/clearance_mm",
                        "at rest the stop is pressed in by " + Numbers.mm(-gap) + " mm",
                        "at least " + Numbers.mm(stop.clearanceMm() - gap));
            }
        }
    }
}
