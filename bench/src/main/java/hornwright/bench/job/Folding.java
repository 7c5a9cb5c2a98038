package hornwright.bench.job;

/** How one sort of stream adds up: from nothing, edit by edit. Pure; the same edits always give the same state. */
public interface Folding<S> {
    S start();

    S with(S state, Posted posted);
}
