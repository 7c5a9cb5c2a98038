package hornwright.engines.pitch;

/** Delete me with the first real class of this package. */
final class Unbuilt {
    private Unbuilt() {}
}
