package hornwright.desk.reckon;

import hornwright.desk.json.Fields;
import hornwright.engines.air.AirInput.BorePoint;
import hornwright.engines.air.AirInput.Hole;
import hornwright.engines.air.AirInput.Leak;
import java.util.List;
import java.util.stream.IntStream;

/** Where holes and leaks lie must make sense on the bore. */
final class AirPlaces {
    private static final List<BorePoint> STAND_IN = List.of(new BorePoint(0, 0.01), new BorePoint(1, 0.01));

    private AirPlaces() {}

    static List<BorePoint> bore(Fields in, List<BorePoint> bore) {
        if (bore.size() == 1) {
            in.fault("bore", "one point is no tube", "at least two points");
        }
        boolean good = bore.size() > 1;
        for (int i = 1; i < bore.size(); i++) {
            if (!(bore.get(i).at() > bore.get(i - 1).at())) {
                place(in, "bore", i, "at_mm", "the bore runs backwards here", "more than the at_mm before it");
                good = false;
            }
        }
        return good ? bore : STAND_IN;
    }

    static void check(Fields in, List<BorePoint> bore, List<Hole> holes, List<Leak> leaks, boolean interaction) {
        if (bore.equals(STAND_IN)) {
            return;
        }
        for (int i = 0; i < holes.size(); i++) {
            Hole hole = holes.get(i);
            if (inside(in, bore, "holes", i, hole.at()) && hole.radius() > radius(bore, hole.at()) * (1 + 1e-9)) {
                place(in, "holes", i, "diameter_mm", "the hole is wider than the bore there", widest(bore, hole));
            }
        }
        for (int i = 0; i < leaks.size(); i++) {
            inside(in, bore, "leaks", i, leaks.get(i).at());
        }
        if (interaction) {
            apart(in, bore, holes);
        }
    }

    private static void apart(Fields in, List<BorePoint> bore, List<Hole> holes) {
        for (int i = 0; i < holes.size(); i++) {
            int here = i;
            boolean shared = IntStream.range(0, i)
                    .anyMatch(k -> holes.get(k).at() == holes.get(here).at());
            if (shared || holes.get(i).at() == bore.getLast().at()) {
                place(in, "holes", i, "at_mm", "with interaction two openings need some distance", "another at_mm");
            }
        }
    }

    private static boolean inside(Fields in, List<BorePoint> bore, String list, int index, double at) {
        if (at > bore.getLast().at()) {
            String end = "at most " + Unit.MM.of(bore.getLast().at());
            place(in, list, index, "at_mm", "this lies beyond the bell", end);
            return false;
        }
        if (at < bore.getFirst().at()) {
            String end = "at least " + Unit.MM.of(bore.getFirst().at());
            place(in, list, index, "at_mm", "this lies before the small end", end);
            return false;
        }
        return true;
    }

    private static String widest(List<BorePoint> bore, Hole hole) {
        return "at most " + Math.floor(20 * Unit.MM.of(radius(bore, hole.at()))) / 10;
    }

    private static double radius(List<BorePoint> bore, double at) {
        int right = 1;
        while (right < bore.size() - 1 && bore.get(right).at() < at) {
            right++;
        }
        BorePoint a = bore.get(right - 1);
        BorePoint b = bore.get(right);
        return a.radius() + (b.radius() - a.radius()) * (at - a.at()) / (b.at() - a.at());
    }

    private static void place(Fields in, String list, int index, String field, String what, String example) {
        in.faults().add(in.pointer() + "/" + list + "/" + index + "/" + field, what, example);
    }
}
