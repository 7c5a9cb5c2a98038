package hornwright.desk.use;

import hornwright.desk.journal.Hand;
import java.util.UUID;

/**
 * What every form brings along: the seq its writer saw, whose hand it was, and a key of its own, so that sending it twice
 * keeps it once.
 */
public record Form(long expectedSeq, Hand hand, String key) {
    /** A form filled in just now that will be sent once. */
    public static Form once(long expectedSeq, Hand hand) {
        return new Form(expectedSeq, hand, UUID.randomUUID().toString());
    }

    /** Stands for the n-th of several things one form brings, so that each gets an id of its own. */
    Form part(int n) {
        return new Form(expectedSeq, hand, key + "#" + n);
    }
}
