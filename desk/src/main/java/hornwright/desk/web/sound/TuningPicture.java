package hornwright.desk.web.sound;

import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.sound.SoundAnswer.NoteLine;
import hornwright.bench.sound.WrittenNote;
import hornwright.desk.web.view.Written;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The whole horn in one picture: a row is one fingering, the upper register on its upper line, the lower on its lower,
 * flat to the left and sharp to the right of where the notes belong.
 *
 * @param height of the drawing in its own units; it is {@link #WIDTH} wide
 * @param told all of it in a sentence, for those who do not see it
 */
public record TuningPicture(
        int height, String middle, String bandLeft, String bandRight, List<Tick> ticks, List<Row> rows, String told) {
    public static final int WIDTH = 520;
    private static final double LEFT = 112;
    private static final double RIGHT = 500;
    private static final int TOP = 52;
    private static final int PITCH = 32;
    private static final double UPPER = 10;
    private static final double LOWER = 22;
    private static final double NARROWEST = 15;
    private static final double WIDEST = 60;

    public TuningPicture {
        ticks = List.copyOf(ticks);
        rows = List.copyOf(rows);
    }

    /** Whether any note says where the heights of the plan alone would put it. */
    public boolean plans() {
        return rows.stream()
                .flatMap(row -> row.spots().stream())
                .anyMatch(spot -> !spot.planned().isEmpty());
    }

    /** A figure of the scale. */
    public record Tick(String x, String label) {}

    /** One fingering; {@code y} is its top. */
    public record Row(String name, String y, String base, List<Spot> spots) {
        public Row {
            spots = List.copyOf(spots);
        }
    }

    /**
     * One note.
     *
     * @param upper whether it is of the upper register
     * @param was where it is played
     * @param planned where the heights of the plan put it when something is offered beyond them; else empty
     * @param will where it will be; empty when nothing moves it
     * @param from left end of the doubt about that
     * @param to right end of it
     */
    public record Spot(boolean upper, String y, String was, String planned, String will, String from, String to) {}

    private record Pair(
            String name, @Nullable NoteLine lower, @Nullable NoteLine upper) {}

    private record Scale(double reach) {
        double x(double cents) {
            double share = Math.clamp(cents / reach, -1, 1);
            return (LEFT + RIGHT) / 2 + share * (RIGHT - LEFT) / 2;
        }
    }

    /**
     * @param band the shop's band, cents
     * @param was what the first place of a note is, in words
     * @param will what the second is
     */
    public static TuningPicture of(List<NoteLine> notes, double band, String was, String will) {
        Scale scale = new Scale(reach(notes, band));
        List<Row> rows = new ArrayList<>();
        int y = TOP;
        for (Pair pair : pairs(notes)) {
            rows.add(row(pair, y, scale));
            y += PITCH;
        }
        List<Tick> ticks = new ArrayList<>();
        double step = scale.reach() > 30 ? 20 : scale.reach() > 15 ? 10 : 5;
        for (double cents = -Math.floor(scale.reach() / step) * step; cents <= scale.reach(); cents += step) {
            String sign = cents > 0 ? "+" : cents < 0 ? "−" : "";
            ticks.add(new Tick(n(scale.x(cents)), sign + Math.round(Math.abs(cents))));
        }
        return new TuningPicture(
                y + 6, n(scale.x(0)), n(scale.x(-band)), n(scale.x(band)), ticks, rows, told(notes, band, was, will));
    }

    private static double reach(List<NoteLine> notes, double band) {
        double most = Math.max(NARROWEST, band + 2);
        for (NoteLine note : notes) {
            most = Math.max(most, Math.abs(note.played().value()) + 1);
            most = Math.max(
                    most, Math.abs(note.then().value()) + 2 * note.then().u());
        }
        return Math.min(WIDEST, Math.ceil(most / 5) * 5);
    }

    /** Both registers of one fingering together, in the order of the lower. */
    private static List<Pair> pairs(List<NoteLine> notes) {
        Map<String, Pair> pairs = new LinkedHashMap<>();
        for (NoteLine note : notes) {
            int semitone = WrittenNote.of(note.fingering().written()).semitone();
            boolean upper = note.fingering().register() > 1;
            String key = (upper ? semitone - 12 : semitone) + note.fingering().label();
            Pair other = pairs.get(key);
            String full = WrittenNote.shown(note.fingering());
            String name = other == null ? full : full.replaceFirst("\\d", "");
            pairs.put(
                    key,
                    new Pair(
                            name,
                            upper ? other == null ? null : other.lower() : note,
                            upper ? note : other == null ? null : other.upper()));
        }
        return List.copyOf(pairs.values());
    }

    private static Row row(Pair pair, int y, Scale scale) {
        List<Spot> spots = new ArrayList<>();
        if (pair.upper() != null) {
            spots.add(spot(pair.upper(), true, y + UPPER, scale));
        }
        if (pair.lower() != null) {
            spots.add(spot(pair.lower(), false, y + LOWER, scale));
        }
        return new Row(pair.name(), n(y), n(y + 21), spots);
    }

    private static Spot spot(NoteLine note, boolean upper, double y, Scale scale) {
        PlannedNumber will = note.planned() == null && note.predicted() == null ? null : note.then();
        boolean both = note.planned() != null && note.predicted() != null;
        return new Spot(
                upper,
                n(y),
                n(scale.x(note.played().value())),
                both ? n(scale.x(note.before().value())) : "",
                will == null ? "" : n(scale.x(will.value())),
                will == null ? "" : n(scale.x(will.value() - 2 * will.u())),
                will == null ? "" : n(scale.x(will.value() + 2 * will.u())));
    }

    private static String told(List<NoteLine> notes, double band, String was, String will) {
        long now = notes.stream()
                .filter(note -> Math.abs(note.played().value()) > band)
                .count();
        long then = notes.stream()
                .filter(note -> Math.abs(note.then().value()) > band)
                .count();
        return "Cents from in tune of %d notes in both registers: %d lie further than %s cents off %s, %d %s."
                .formatted(notes.size(), now, Written.plain(band), was, then, will);
    }

    private static String n(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
