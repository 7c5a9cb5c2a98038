package hornwright.desk.drawing;

import hornwright.bench.horn.Place;
import org.jspecify.annotations.Nullable;

/** What the drawing shows of a place: its material and how it stands on the layer chosen. */
@FunctionalInterface
public interface Showing {
    /**
     * @param material in the words of the bench; decides pattern and colour
     * @param standing decides token, hatching and wash
     * @param says what a layer of numbers or words says of it; null where material and standing say everything
     * @param depth of its colour from 1 to 5 on a layer of numbers; 0 where it has none
     * @param figure what stands at a cup instead of its name; null on a layer without numbers
     */
    record Shown(
            String material,
            Standing standing,
            @Nullable String says,
            int depth,
            @Nullable String figure) {
        public Shown(String material, Standing standing) {
            this(material, standing, null, 0, null);
        }

        String inWords() {
            return says == null ? material + ", " + standing.spoken() : says;
        }
    }

    Shown of(Place place);

    /** Every place as its maker left it. */
    static Showing asBuilt() {
        return place -> new Shown(place.asBuilt().material(), Standing.AS_BUILT);
    }
}
