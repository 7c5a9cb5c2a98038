package hornwright.desk.cli;

/** The exit codes every command keeps to. */
public final class ExitCode {
    public static final int DONE = 0;
    /** It ran, but something asked for could not be had. */
    public static final int SHORT = 1;

    public static final int BAD_INPUT = 2;
    /** Data damaged, or written by a newer program. */
    public static final int DAMAGED = 3;

    /** Not an exit: the program stays and answers. */
    public static final int STAYS = -1;

    private ExitCode() {}
}
