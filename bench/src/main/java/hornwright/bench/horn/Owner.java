package hornwright.bench.horn;

/**
 * What a place belongs to.
 */
public sealed interface Owner {
    String id();

    record OfCup(String id) implements Owner {}

    record OfKey(String id) implements Owner {}

    record OfLink(String id) implements Owner {}

    record OfRod(String id) implements Owner {}

    record OfHole(String id) implements Owner {}

    record OfPart(HornPart part) implements Owner {
        @Override
        public String id() {
            return part.word();
        }
    }
}
