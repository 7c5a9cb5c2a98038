package hornwright.bench.horn;

/**
 * Something of the horn with an id that is stable across jobs and files.
 */
public interface Identified {
    String id();
}
