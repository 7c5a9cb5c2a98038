package hornwright.desk.cli;

import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** How a command starts the pages without knowing them; the program's start wires the two. */
@FunctionalInterface
public interface Pages {
    /** Opens the shop and answers until closed. A {@link CannotServe} says in a sentence why it did not start. */
    Running start(Request request) throws IOException, CannotServe;

    /** What an empty shop is filled with: the demo on the first run unless something else is asked for. */
    enum Filling {
        DEMO_WHEN_NEW,
        DEMO,
        EMPTY
    }

    /** A database address wins over a folder. Port 0 takes any that is free. */
    record Request(int port, Path folder, @Nullable String database, Filling filling) {}

    interface Running extends AutoCloseable {
        String address();

        @Override
        void close();
    }

    /** Why the pages did not start, as a sentence for the person. */
    final class CannotServe extends Exception {
        public CannotServe(String sentence) {
            super(sentence);
        }
    }

    /** For runs that have no pages, such as tests of other commands. */
    static Pages none() {
        return request -> {
            throw new CannotServe("This run of the program has no pages.");
        };
    }
}
