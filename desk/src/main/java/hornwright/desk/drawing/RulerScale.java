package hornwright.desk.drawing;

import hornwright.bench.archive.SerialRange;
import java.util.ArrayList;
import java.util.List;

/**
 * Where serials stand on a ruler, and which of them are numbered.
 *
 * @param most numbered ticks that find room
 */
public record RulerScale(SerialRange shown, int most) {
    private static final int[] ROUND = {1, 2, 5};

    /** A tick; the long ones carry their number. */
    record Tick(long serial, boolean numbered) {}

    /** From 0 at the left end to 1 at the right. */
    double share(long serial) {
        return (serial - shown.from()) / (double) (shown.to() - shown.from());
    }

    List<Tick> ticks() {
        long step = step();
        long half = Math.max(1, step / 2);
        List<Tick> ticks = new ArrayList<>();
        for (long serial = Math.ceilDiv(shown.from(), half) * half; serial <= shown.to(); serial += half) {
            ticks.add(new Tick(serial, serial % step == 0));
        }
        return ticks;
    }

    private long step() {
        long span = shown.to() - shown.from();
        for (long decade = 1; ; decade *= 10) {
            for (int round : ROUND) {
                if (span / (decade * round) <= most) {
                    return decade * round;
                }
            }
        }
    }

    /** "41 207", with a thin space. */
    static String written(long serial) {
        String digits = Long.toString(serial);
        int cut = digits.length() - 3;
        return cut < 2 ? digits : digits.substring(0, cut) + '\u2009' + digits.substring(cut);
    }
}
