package hornwright.engines.linkage;

import java.util.List;

/** A load that no spring and no contact takes up: the keys it turns would turn for ever. */
public final class UnbalancedLoad extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<String> keys;

    UnbalancedLoad(List<String> keys) {
        super("nothing balances the load on " + String.join(", ", keys));
        this.keys = List.copyOf(keys);
    }

    /** Ids of the keys whose own load is left over. */
    public List<String> keys() {
        return keys;
    }
}
