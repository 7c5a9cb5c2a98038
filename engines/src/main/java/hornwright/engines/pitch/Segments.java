package hornwright.engines.pitch;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts the frames into notes. A note ends when its pitch leaves 60 cents either side of its running median for 60 ms,
 * when the level falls 30 dB below the loudest 20 ms, or when it starts again after a dip of 10 dB.
 */
final class Segments {
    private static final double OUT_CENTS = 60;
    private static final int OUT_FRAMES = 6;
    private static final double QUIET_DB = 30;
    private static final double DIP_DB = 10;

    private final double floorDb;
    private final List<List<Frame>> found = new ArrayList<>();
    private final List<Frame> note = new ArrayList<>();
    private final List<Frame> outside = new ArrayList<>();
    private final RunningMedian median = new RunningMedian();
    private double highest;
    private double lowest;

    private Segments(double loudestDb) {
        floorDb = loudestDb - QUIET_DB;
    }

    static List<List<Frame>> of(List<Frame> frames) {
        double loudest = frames.stream().mapToDouble(Frame::levelDb).max().orElse(Double.NEGATIVE_INFINITY);
        Segments segments = new Segments(loudest);
        frames.forEach(segments::next);
        segments.end();
        return segments.found;
    }

    private void next(Frame frame) {
        if (frame.levelDb() < floorDb) {
            end();
        } else if (note.isEmpty()) {
            begin(frame);
        } else if (startsAgain(frame)) {
            end();
            begin(frame);
        } else if (frame.voiced() && isNear(frame)) {
            outside.clear();
            take(frame);
        } else {
            outside.add(frame);
            if (outside.size() >= OUT_FRAMES) {
                List<Frame> onward = List.copyOf(outside);
                end();
                onward.forEach(this::next);
            }
        }
    }

    private void begin(Frame frame) {
        if (frame.voiced()) {
            highest = frame.levelDb();
            lowest = frame.levelDb();
            take(frame);
        }
    }

    private void take(Frame frame) {
        note.add(frame);
        median.add(Math.log(frame.frequency()));
    }

    private boolean isNear(Frame frame) {
        double cents = Temperament.cents(frame.frequency(), Math.exp(median.value()));
        return Math.abs(cents) <= OUT_CENTS;
    }

    private boolean startsAgain(Frame frame) {
        double level = frame.levelDb();
        if (level > highest) {
            highest = level;
            lowest = level;
        }
        lowest = Math.min(lowest, level);
        return highest - lowest >= DIP_DB && level - lowest >= DIP_DB;
    }

    private void end() {
        if (!note.isEmpty()) {
            found.add(List.copyOf(note));
        }
        note.clear();
        outside.clear();
        median.clear();
    }
}
