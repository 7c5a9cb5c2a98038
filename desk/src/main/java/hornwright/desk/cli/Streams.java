package hornwright.desk.cli;

import java.io.InputStream;
import java.io.PrintStream;

/** The three streams a command may use; tests pass their own. */
public record Streams(InputStream in, PrintStream out, PrintStream err) {
    public static Streams system() {
        return new Streams(System.in, System.out, System.err);
    }
}
