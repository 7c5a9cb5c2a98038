package hornwright.desk.drawing;

import hornwright.bench.horn.Place;

/** What the drawing shows of a place: its material and how it stands on the layer chosen. */
@FunctionalInterface
public interface Showing {
    /**
     * @param material in the words of the bench; decides pattern and colour
     * @param standing decides token, hatching and wash
     */
    record Shown(String material, Standing standing) {}

    Shown of(Place place);

    /** Every place as its maker left it. */
    static Showing asBuilt() {
        return place -> new Shown(place.asBuilt().material(), Standing.AS_BUILT);
    }
}
