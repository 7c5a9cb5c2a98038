package hornwright.bench.sound;

import hornwright.bench.survey.PlayTest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Two sessions of the same horn compared, with how well either repeats itself.
 *
 * @param common what all notes share, cents: warmth, reed, mouthpiece on its cork
 * @param commonU one standard uncertainty of it
 * @param notes note by note, the common part taken off
 */
public record Baseline(double common, double commonU, List<Difference> notes) {
    private static final double COVERAGE = 2;

    public Baseline {
        notes = List.copyOf(notes);
    }

    /**
     * One note before and after.
     *
     * @param cents after less before, the common part taken off
     * @param u one standard uncertainty of that, from the spread inside the sessions
     * @param changed whether it lies beyond twice its uncertainty
     */
    public record Difference(String fingering, double cents, double u, boolean changed) {}

    /** One playing of one note. */
    public record Played(String fingering, double cents) {}

    /** Compares what both sessions have; at least one note must have been played twice in either, or nothing can be said. */
    public static Optional<Baseline> compare(List<Played> before, List<Played> after) {
        return compare(before, after, Double.NaN);
    }

    /** The same, with a spread of one playing to go by when no note was played twice. */
    public static Optional<Baseline> compare(List<Played> before, List<Played> after, double usualSpread) {
        Map<String, List<Double>> first = byNote(before);
        Map<String, List<Double>> second = byNote(after);
        double repeated = pooled(List.of(first, second));
        double spread = Double.isFinite(repeated) ? repeated : usualSpread;
        List<Raw> raw = both(first, second);
        if (!Double.isFinite(spread) || raw.isEmpty()) {
            return Optional.empty();
        }
        double common = HeightAdvice.median(raw.stream().mapToDouble(Raw::cents).toArray());
        List<Difference> notes = new ArrayList<>();
        double meanSquare = 0;
        for (Raw note : raw) {
            double u = spread * Math.sqrt(note.perVariance());
            double cents = note.cents() - common;
            notes.add(new Difference(note.fingering(), cents, u, Math.abs(cents) > COVERAGE * u));
            meanSquare += u * u / raw.size();
        }
        // the median of normal values spreads √(π/2) as wide as their mean
        double commonU = Math.sqrt(Math.PI / 2 * meanSquare / raw.size());
        return Optional.of(new Baseline(common, commonU, notes));
    }

    /** A note of both sessions; its variance is that of one playing times {@code perVariance}. */
    private record Raw(String fingering, double cents, double perVariance) {}

    private static List<Raw> both(Map<String, List<Double>> first, Map<String, List<Double>> second) {
        List<Raw> both = new ArrayList<>();
        first.forEach((fingering, before) -> {
            List<Double> after = second.get(fingering);
            if (after != null) {
                double perVariance = 1.0 / before.size() + 1.0 / after.size();
                both.add(new Raw(fingering, mean(after) - mean(before), perVariance));
            }
        });
        return both;
    }

    private static Map<String, List<Double>> byNote(List<Played> session) {
        Map<String, List<Double>> byNote = new LinkedHashMap<>();
        session.forEach(p ->
                byNote.computeIfAbsent(p.fingering(), n -> new ArrayList<>()).add(p.cents()));
        return byNote;
    }

    /** One standard deviation of one playing, pooled over all notes a test has more than once; empty if there are none. */
    public static OptionalDouble spread(List<PlayTest> tests) {
        double spread = pooled(tests.stream()
                .map(test -> byNote(test.notes().stream()
                        .map(note -> new Played(note.fingering(), note.cents()))
                        .toList()))
                .toList());
        return Double.isFinite(spread) ? OptionalDouble.of(spread) : OptionalDouble.empty();
    }

    /** Standard deviation of one playing, pooled over all notes played more than once; NaN if there are none. */
    private static double pooled(List<Map<String, List<Double>>> sessions) {
        double squares = 0;
        int free = 0;
        for (Map<String, List<Double>> session : sessions) {
            for (List<Double> plays : session.values()) {
                double mean = mean(plays);
                for (double play : plays) {
                    squares += (play - mean) * (play - mean);
                }
                free += plays.size() - 1;
            }
        }
        return free == 0 ? Double.NaN : Math.sqrt(squares / free);
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
    }
}
