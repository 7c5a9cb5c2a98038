package hornwright.desk.bag;

import java.util.List;

/** A file that is not taken as a bag; every reason is told. */
public final class UnreadableBag extends RuntimeException {
    private final transient List<String> reasons;

    public UnreadableBag(List<String> reasons) {
        super(String.join(" ", reasons));
        this.reasons = List.copyOf(reasons);
    }

    UnreadableBag(String reason) {
        this(List.of(reason));
    }

    public List<String> reasons() {
        return reasons;
    }
}
