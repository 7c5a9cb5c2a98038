package hornwright.desk.use;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Course;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Resolution;
import hornwright.bench.archive.SerialRange;
import hornwright.bench.archive.Witness;
import hornwright.bench.horn.Voice;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** What the archive holds: horns, and looks that speak against the rest and that nobody has settled. */
public record ShowArchive(Shop shop) {
    /** A look below this weighs too little to contest anything. */
    private static final int CONTESTS = 2;

    /**
     * Looks at one horn that all show the same where the same other thing is likeliest.
     *
     * @param evidence their ids
     */
    public record Contest(
            Witness witness, String shows, String likeliest, List<String> places, List<String> evidence) {}

    private record Alike(String witness, String shows, String likeliest) {}

    /** What speaks against the likeliest material at its own serial, strongly, with nothing written to settle it. */
    public List<Contest> contests(String maker) {
        Archive archive = shop.archive().state().of(maker);
        List<Contest> contests = new ArrayList<>();
        for (Voice voice : Voice.values()) {
            contests.addAll(contests(archive, voice));
        }
        return contests;
    }

    private static List<Contest> contests(Archive archive, Voice voice) {
        Map<String, Witness> known = new LinkedHashMap<>();
        archive.witnesses().stream().filter(w -> w.voice() == voice).forEach(w -> known.put(w.id(), w));
        if (known.isEmpty()) {
            return List.of();
        }
        TreeSet<String> places = new TreeSet<>();
        archive.observations().stream()
                .filter(seen -> known.containsKey(seen.witness()))
                .map(Observation::place)
                .forEach(places::add);
        long low = known.values().stream().mapToLong(Witness::serial).min().orElse(0);
        long high = known.values().stream().mapToLong(Witness::serial).max().orElse(0);
        List<String> settled =
                archive.resolutions().stream().map(Resolution::evidence).toList();
        Map<Alike, Contest> contests = new LinkedHashMap<>();
        for (Course course : archive.courses(voice, new SerialRange(low, high), places)) {
            for (Course.Mark mark : course.marks()) {
                if (mark.strength() >= CONTESTS && course.isAgainst(mark) && !settled.contains(mark.evidence())) {
                    add(contests, known, course, mark);
                }
            }
        }
        return List.copyOf(contests.values());
    }

    private static void add(Map<Alike, Contest> contests, Map<String, Witness> known, Course course, Course.Mark mark) {
        String likeliest = course.steps().stream()
                .filter(step -> step.serial() == mark.serial())
                .findFirst()
                .map(Course.Step::likeliest)
                .orElse("");
        Witness witness = known.get(mark.witness());
        if (witness != null) {
            Contest contest = contests.computeIfAbsent(
                    new Alike(mark.witness(), mark.material(), likeliest),
                    alike -> new Contest(witness, mark.material(), likeliest, new ArrayList<>(), new ArrayList<>()));
            contest.places().add(course.place());
            contest.evidence().add(mark.evidence());
        }
    }
}
