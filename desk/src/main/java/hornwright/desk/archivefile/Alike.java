package hornwright.desk.archivefile;

import hornwright.bench.archive.Observation;
import java.util.ArrayList;
import java.util.List;

/**
 * Looks one after another that differ in nothing but their place.
 *
 * @param id what their ids begin with; the whole id of a single look
 */
record Alike(String id, List<Observation> looks) {
    static List<Alike> of(List<Observation> observations) {
        List<Alike> all = new ArrayList<>();
        List<Observation> run = new ArrayList<>();
        for (Observation look : observations) {
            if (!run.isEmpty() && !joins(run.getFirst(), look)) {
                all.add(of(run, run.getFirst()));
                run.clear();
            }
            run.add(look);
        }
        if (!run.isEmpty()) {
            all.add(of(run, run.getFirst()));
        }
        return all;
    }

    private static Alike of(List<Observation> run, Observation first) {
        return new Alike(run.size() == 1 ? first.id() : prefix(first), List.copyOf(run));
    }

    private static boolean joins(Observation first, Observation next) {
        String shared = prefix(first);
        return !shared.isEmpty()
                && next.id().equals(shared + "." + next.place())
                && ObservationJson.at(next, first.id(), first.place()).equals(first);
    }

    /** "w-1.feet" of the look "w-1.feet.foot.d" at "foot.d"; empty when the id does not end with its place. */
    private static String prefix(Observation look) {
        String end = "." + look.place();
        return look.id().endsWith(end) ? look.id().substring(0, look.id().length() - end.length()) : "";
    }
}
