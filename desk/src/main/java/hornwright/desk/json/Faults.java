package hornwright.desk.json;

import java.util.ArrayList;
import java.util.List;

/** The faults found so far; reading goes on after one, so that a person can mend all of them at once. */
public final class Faults {
    private final List<Fault> found = new ArrayList<>();

    public void add(String pointer, String what, String example) {
        found.add(new Fault(pointer, what, example));
    }

    public void addAll(List<Fault> more) {
        found.addAll(more);
    }

    public boolean isEmpty() {
        return found.isEmpty();
    }

    public List<Fault> list() {
        return List.copyOf(found);
    }

    /** Throws {@link BadInput} with all faults, if there are any. */
    public void refuseIfAny() {
        if (!found.isEmpty()) {
            throw new BadInput(found);
        }
    }
}
