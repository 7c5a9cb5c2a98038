package hornwright.bench.archive;

/** Serial numbers from first to last, both included. */
public record SerialRange(long from, long to) {
    public SerialRange {
        if (from > to) {
            throw new IllegalArgumentException("serials run from the lower to the higher, got " + from + " to " + to);
        }
    }

    public static SerialRange one(long serial) {
        return new SerialRange(serial, serial);
    }

    public boolean contains(long serial) {
        return from <= serial && serial <= to;
    }

    public boolean contains(SerialRange other) {
        return from <= other.from && other.to <= to;
    }

    /** Whether any serial lies in both. */
    public boolean meets(SerialRange other) {
        return from <= other.to && other.from <= to;
    }

    public boolean isOne() {
        return from == to;
    }

    /** "41207" or "41000 to 42500". */
    public String inWords() {
        return isOne() ? Long.toString(from) : from + " to " + to;
    }
}
