package hornwright.desk.drawing;

import hornwright.bench.archive.Course;
import hornwright.bench.archive.SerialRange;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A band of materials along the serials, joined as a joiner scarfs two boards: at each serial a material is as thick as it
 * is likely there, so a change-over nobody has pinned down is a long slope and a sure one a short step. Where no horn was
 * looked at beyond, the band goes on narrow.
 *
 * @param boards from the upper edge down; x and y run from 0 to 1
 */
record Scarf(List<Board> boards) {
    /** Beyond the last horn looked at the band has this share of its width. */
    private static final double NARROW = 0.34;

    /** A material that is never this likely is left out; its share would be a hair. */
    private static final double SEEN = 0.015;

    /**
     * @param second whether another board of the band is of the same stuff, so that this one needs the wider pattern
     * @param upper and {@code lower}: the edges, left to right
     */
    record Board(String material, Stuff stuff, boolean second, List<Spot> upper, List<Spot> lower) {}

    private record Station(double x, double width, Course.Step step) {}

    static Scarf of(Course course, SerialRange shown) {
        List<String> materials = course.materials().stream()
                .filter(material -> course.steps().stream().anyMatch(step -> step.of(material) >= SEEN))
                .toList();
        List<Station> stations = stations(course, shown);
        Set<Stuff> used = EnumSet.noneOf(Stuff.class);
        List<Board> boards = new ArrayList<>();
        double[] above = new double[stations.size()];
        for (String material : materials) {
            boolean last = boards.size() == materials.size() - 1;
            List<Spot> upper = new ArrayList<>();
            List<Spot> lower = new ArrayList<>();
            for (int i = 0; i < stations.size(); i++) {
                Station station = stations.get(i);
                upper.add(spot(station, above[i]));
                above[i] = last ? 1 : above[i] + station.step().of(material);
                lower.add(spot(station, above[i]));
            }
            Stuff stuff = Stuff.of(material);
            boards.add(new Board(material, stuff, !used.add(stuff), upper, lower));
        }
        return new Scarf(boards);
    }

    private static Spot spot(Station station, double share) {
        return new Spot(station.x(), 0.5 + (Math.min(1, share) - 0.5) * station.width());
    }

    private static List<Station> stations(Course course, SerialRange shown) {
        long first = course.marks().getFirst().serial();
        long last = course.marks().getLast().serial();
        List<Station> stations = new ArrayList<>();
        for (Course.Step step : course.steps()) {
            double x = (step.serial() - shown.from()) / (double) (shown.to() - shown.from());
            boolean within = step.serial() >= first && step.serial() <= last;
            if (step.serial() == first && step.serial() > shown.from()) {
                stations.add(new Station(x, NARROW, step));
            }
            stations.add(new Station(x, within ? 1 : NARROW, step));
            if (step.serial() == last && step.serial() < shown.to()) {
                stations.add(new Station(x, NARROW, step));
            }
        }
        return stations;
    }
}
