package hornwright.desk.reckon;

import hornwright.desk.json.Fields;

/** One engine as the command line sees it. */
public interface Engine {
    /** The word after {@code reckon}. */
    String name();

    /** What it answers, in a few words. */
    String question();

    /**
     * Reads one input, noting every fault in {@code in.faults()}; computes nothing yet. The returned reckoning is run
     * only if no input of the whole run had a fault.
     */
    Reckoning read(Fields in);

    /** A checked input, ready to compute. May throw BadInput for what only computing can find. */
    @FunctionalInterface
    interface Reckoning {
        Answer compute();
    }
}
