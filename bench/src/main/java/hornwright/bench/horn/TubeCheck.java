package hornwright.bench.horn;

import java.util.List;

/** The bore runs one way and its parts join without gap. */
final class TubeCheck {
    private TubeCheck() {}

    static void look(Tube tube, Flaws flaws) {
        bore(tube.bore(), flaws);
        parts(tube, flaws);
    }

    private static void bore(List<BorePoint> bore, Flaws flaws) {
        if (bore.size() < 2) {
            flaws.add("/tube/bore", "a bore needs two points at least", "[ {\"at_mm\": 0, …}, {\"at_mm\": 1052, …} ]");
        }
        for (int i = 1; i < bore.size(); i++) {
            double before = bore.get(i - 1).atMm();
            if (bore.get(i).atMm() <= before) {
                flaws.add(
                        "/tube/bore/" + i + "/at_mm",
                        "the bore runs backwards: " + bore.get(i).atMm() + " after " + before,
                        "more than " + before);
            }
        }
    }

    private static void parts(Tube tube, Flaws flaws) {
        double reached = tube.bore().getFirst().atMm();
        for (int i = 0; i < tube.parts().size(); i++) {
            TubePart part = tube.parts().get(i);
            if (part.fromMm() != reached || part.toMm() <= part.fromMm()) {
                flaws.add(
                        "/tube/parts/" + i,
                        "the " + part.part().word() + " runs from " + part.fromMm() + " to " + part.toMm()
                                + ", the part before ends at " + reached,
                        "\"from_mm\": " + reached);
            }
            reached = part.toMm();
        }
        if (reached != tube.lengthMm()) {
            flaws.add(
                    "/tube/parts",
                    "the parts end at " + reached + ", the bore at " + tube.lengthMm(),
                    "\"to_mm\": " + tube.lengthMm());
        }
    }
}
