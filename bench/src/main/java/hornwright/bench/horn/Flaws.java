package hornwright.bench.horn;

import java.util.ArrayList;
import java.util.List;

/** Collects flaws; looking goes on after one, so that all can be mended together. */
final class Flaws {
    private final List<Flaw> found = new ArrayList<>();

    void add(String pointer, String what, String example) {
        found.add(new Flaw(pointer, what, example));
    }

    /** Notes a flaw unless {@code id} is one of {@code known}. */
    void unlessKnown(ById<?> known, String id, String kind, String pointer) {
        if (!known.contains(id)) {
            String example = known.size() == 0
                    ? "a " + kind + " of this file"
                    : known.list().getFirst().id();
            add(pointer, "no " + kind + " is called \"" + id + "\"", "\"" + example + "\"");
        }
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    List<Flaw> list() {
        return List.copyOf(found);
    }
}
