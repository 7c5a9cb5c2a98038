package hornwright.bench.horn;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Cups, keys and links must belong to something that is there. */
final class ReferenceCheck {
    private final Keywork keywork;
    private final Flaws flaws;

    private ReferenceCheck(Keywork keywork, Flaws flaws) {
        this.keywork = keywork;
        this.flaws = flaws;
    }

    static void look(Keywork keywork, Flaws flaws) {
        ReferenceCheck check = new ReferenceCheck(keywork, flaws);
        check.cups();
        check.holes();
        check.keys();
        check.links();
    }

    private void cups() {
        Map<String, String> covered = new HashMap<>();
        for (int i = 0; i < keywork.cups().size(); i++) {
            Cup cup = keywork.cups().list().get(i);
            String at = "/cups/" + i;
            flaws.unlessKnown(keywork.holes(), cup.hole(), "hole", at + "/hole");
            if (!keywork.keys().contains(cup.key())) {
                flaws.add(
                        at + "/key",
                        cup.id() + " sits on no key: there is no key \"" + cup.key() + "\"",
                        "the id of a key of this file, such as \""
                                + keywork.keys().list().getFirst().id() + "\"");
            }
            String other = covered.put(cup.hole(), cup.id());
            if (other != null) {
                flaws.add(at + "/hole", other + " already covers this hole", "a hole of its own for each cup");
            }
        }
    }

    private void holes() {
        for (int i = 0; i < keywork.holes().size(); i++) {
            String id = keywork.holes().list().get(i).id();
            if (keywork.cups().stream().noneMatch(cup -> cup.hole().equals(id))) {
                flaws.add(
                        "/holes/" + i, "no cup covers the hole \"" + id + "\"", "a cup with \"hole\": \"" + id + "\"");
            }
        }
    }

    private void keys() {
        for (int i = 0; i < keywork.keys().size(); i++) {
            Key key = keywork.keys().list().get(i);
            String at = "/keys/" + i;
            flaws.unlessKnown(keywork.rods(), key.rod(), "rod", at + "/rod");
            flaws.unlessKnown(keywork.places(), key.spring().place(), "place", at + "/spring/place");
            layers(key.stop().layers(), at + "/stop/layers");
            Stop closing = key.closingStop();
            if (closing != null) {
                layers(closing.layers(), at + "/closingStop/layers");
            }
        }
    }

    private void links() {
        for (int i = 0; i < keywork.links().size(); i++) {
            Link link = keywork.links().list().get(i);
            String at = "/links/" + i;
            flaws.unlessKnown(keywork.keys(), link.driver(), "key", at + "/driver");
            flaws.unlessKnown(keywork.keys(), link.follower(), "key", at + "/follower");
            if (link.driver().equals(link.follower())) {
                flaws.add(at + "/follower", "a key cannot act on itself", "a driver and a follower that differ");
            }
            layers(link.layers(), at + "/layers");
            AdjustingScrew screw = link.screw();
            if (screw != null && screw.pitchMm() > AdjustingScrew.COARSEST_MM) {
                flaws.add(
                        at + "/screw/pitch_mm",
                        "one turn of this screw moves the contact by " + Numbers.mm(screw.pitchMm()) + " mm",
                        "at most " + Numbers.mm(AdjustingScrew.COARSEST_MM));
            }
            Coupling coupling = link.coupling();
            if (coupling != null) {
                flaws.unlessKnown(keywork.keys(), coupling.through(), "key", at + "/coupling/through");
                flaws.unlessKnown(keywork.keys(), coupling.whenKey(), "key", at + "/coupling/when/key");
            }
        }
    }

    private void layers(List<Layer> layers, String at) {
        for (int i = 0; i < layers.size(); i++) {
            flaws.unlessKnown(keywork.places(), layers.get(i).place(), "place", at + "/" + i + "/place");
        }
    }
}
