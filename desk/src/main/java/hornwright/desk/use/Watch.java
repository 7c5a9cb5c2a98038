package hornwright.desk.use;

import java.time.Duration;
import java.util.function.LongSupplier;

/**
 * Wakes those who wait for an edit. An edit of this program wakes them at once; one that another program wrote into the
 * same database is seen when they look again, after two seconds at most.
 */
final class Watch {
    private static final long LOOK_AGAIN = Duration.ofSeconds(2).toNanos();

    private long saves;

    synchronized void saved() {
        saves++;
        notifyAll();
    }

    /** Asks how far something has come until that lies beyond {@code seq} or the time is over. */
    long until(LongSupplier come, long seq, Duration most) throws InterruptedException {
        long end = System.nanoTime() + most.toNanos();
        while (true) {
            long before = saves();
            long now = come.getAsLong();
            long left = end - System.nanoTime();
            if (now > seq || left <= 0) {
                return now;
            }
            pause(before, Math.min(left, LOOK_AGAIN));
        }
    }

    private synchronized long saves() {
        return saves;
    }

    private synchronized void pause(long before, long nanos) throws InterruptedException {
        long end = System.nanoTime() + nanos;
        for (long left = nanos; saves == before && left > 0; left = end - System.nanoTime()) {
            wait(left / 1_000_000 + 1);
        }
    }
}
