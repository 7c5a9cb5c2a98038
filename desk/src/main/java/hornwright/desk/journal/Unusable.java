package hornwright.desk.journal;

import org.jspecify.annotations.Nullable;

/**
 * The data cannot be used as it stands: damaged, from a newer program, or just now not to be had. The message is a
 * sentence for the person.
 */
public final class Unusable extends RuntimeException {
    private final boolean onlyNow;

    public Unusable(String why) {
        this(why, null, false);
    }

    public Unusable(String why, @Nullable Throwable cause) {
        this(why, cause, false);
    }

    private Unusable(String why, @Nullable Throwable cause, boolean onlyNow) {
        super(why, cause);
        this.onlyNow = onlyNow;
    }

    /** Nothing is wrong with the data; another program holds it or the server does not answer. */
    static Unusable now(String why, @Nullable Throwable cause) {
        return new Unusable(why, cause, true);
    }

    /** Whether trying again later may help. */
    public boolean isOnlyNow() {
        return onlyNow;
    }
}
