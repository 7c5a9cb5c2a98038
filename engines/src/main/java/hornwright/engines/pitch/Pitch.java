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
    /** Parts of the peak: what counts as sounding at all, and what as standing at the peak. */
    private static final double SOUNDING = 0.05;

    private static final double AT_PEAK = 0.9999;
    /** Share of the sounding time spent at the peak; a pure tone spends 0.01 there, one of 8 bits 0.06. */
    private static final double CLIPPED_AT_FULL_SCALE = 0.02;

    private static final double CLIPPED_BELOW = 0.12;

    private Pitch() {}

    public static Heard hear(Recording recording) {
        if (isClipped(recording.samples())) {
            return new Heard.Refused(
                    "The recording is clipped: it stands at its peak too long. Record it again, quieter.");
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

    /** A tone spends little time at its very peak, a cut one much; whoever cut it below full scale needs more proof. */
    private static boolean isClipped(double[] samples) {
        double peak = Arrays.stream(samples).map(Math::abs).max().orElse(0);
        long sounding = Arrays.stream(samples)
                .filter(sample -> Math.abs(sample) > SOUNDING * peak)
                .count();
        long atPeak = Arrays.stream(samples)
                .filter(sample -> Math.abs(sample) >= AT_PEAK * peak)
                .count();
        double share = atPeak / (double) Math.max(1, sounding);
        return peak > 0 && share >= (peak >= FULL_SCALE ? CLIPPED_AT_FULL_SCALE : CLIPPED_BELOW);
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
