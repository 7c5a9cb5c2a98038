package hornwright.desk.journal;

import org.jspecify.annotations.Nullable;

/** The data cannot be used as it stands: damaged, held by another program, or from a newer one. The message is a sentence for the person. */
public final class Unusable extends RuntimeException {
    public Unusable(String why) {
        super(why);
    }

    public Unusable(String why, @Nullable Throwable cause) {
        super(why, cause);
    }
}
