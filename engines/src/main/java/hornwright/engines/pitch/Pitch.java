package hornwright.engines.pitch;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Front door: which notes does a recording hold, and how were they in tune? Range 50 to 2000 Hz. On steady tones of a
 * horn's spectrum the error is below 0.05 cent; {@code docs/method/pitch.md} has the figures and what it cannot hear.
 */
public final class Pitch {
    private static final double SHORTEST_S = 0.100;
    /** Quieter than this, in dB below full scale, is silence. */
    private static final double SILENT_DB = -60;

    private static final double FULL_SCALE = 0.9999;
    private static final int RUN = 3;
    private static final int RUNS = 5;

    private Pitch() {}

    public static Heard hear(Recording recording) {
        if (isClipped(recording.samples())) {
            return new Heard.Refused(
                    "The recording is clipped: many samples in a row stand at full scale. Record it again, quieter.");
        }
        List<Frame> frames = Listening.to(recording);
        double loudest = frames.stream().mapToDouble(Frame::levelDb).max().orElse(Double.NEGATIVE_INFINITY);
        if (loudest < SILENT_DB) {
            return new Heard.Refused("The recording is silent. Check the microphone and play nearer to it.");
        }
        if (isManyVoiced(frames, loudest)) {
            return new Heard.Refused(
                    "There is more than one voice in the recording, or mostly noise. Record one horn alone.");
        }
        return new Heard.Notes(Segments.of(frames).stream()
                .flatMap(segment -> note(segment).stream())
                .toList());
    }

    private static Optional<Note> note(List<Frame> segment) {
        double half = Listening.HOP_S / 2;
        double start = segment.getFirst().atS() - half;
        double end = segment.getLast().atS() + half;
        if (end - start < SHORTEST_S - 1e-9) {
            return Optional.empty();
        }
        double[] middle = segment.stream()
                .filter(frame -> frame.atS() >= start + 0.2 * (end - start) && frame.atS() <= end - 0.2 * (end - start))
                .mapToDouble(Frame::frequency)
                .sorted()
                .toArray();
        double frequency = share(middle, 0.5);
        double spread = Temperament.cents(share(middle, 0.95), share(middle, 0.05)) / 2;
        return Optional.of(new Note(start, end, frequency, spread));
    }

    /** The value below which so large a share lies, between neighbours. */
    private static double share(double[] sorted, double share) {
        double at = share * (sorted.length - 1);
        int below = (int) at;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }

    private static boolean isClipped(double[] samples) {
        double peak = Arrays.stream(samples).map(Math::abs).max().orElse(0);
        if (peak < FULL_SCALE) {
            return false;
        }
        int run = 0;
        int runs = 0;
        for (double sample : samples) {
            run = Math.abs(sample) >= peak - 1e-9 || Math.abs(sample) >= FULL_SCALE ? run + 1 : 0;
            runs += run == RUN ? 1 : 0;
        }
        return runs >= RUNS;
    }

    /** Loud looks of which most do not repeat, or repeat without their own fundamental. */
    private static boolean isManyVoiced(List<Frame> frames, double loudest) {
        List<Frame> loud =
                frames.stream().filter(frame -> frame.levelDb() > loudest - 15).toList();
        long odd =
                loud.stream().filter(frame -> !frame.voiced() || frame.hollow()).count();
        return 2 * odd > loud.size();
    }
}
