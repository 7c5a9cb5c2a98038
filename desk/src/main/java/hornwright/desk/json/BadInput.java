package hornwright.desk.json;

import java.util.List;
import java.util.stream.Collectors;

/** An input that cannot be used, with every fault found in it. The command line answers with exit code 2. */
public final class BadInput extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;

    public BadInput(List<Fault> faults) {
        super(faults.stream().map(Fault::line).collect(Collectors.joining("\n")));
        this.faults = List.copyOf(faults);
    }

    public BadInput(String pointer, String what, String example) {
        this(List.of(new Fault(pointer, what, example)));
    }

    public List<Fault> faults() {
        return faults;
    }
}
