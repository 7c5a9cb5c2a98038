package hornwright.bench.archive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One sitting with a witness: strokes of one material over many places, and if wanted "the same as that other horn except
 * what I say". A place painted again takes the place of what was said of it from the same origin before.
 */
public final class Painting {
    /** One material over places that looked alike; the name becomes part of the ids. */
    public record Stroke(String name, List<String> places, Sight sight) {
        public Stroke {
            places = List.copyOf(places);
        }
    }

    private final Witness witness;
    private final How how;
    private final Map<String, String> known = new HashMap<>();

    /** @param archive what is known already */
    public Painting(Archive archive, Witness witness, How how) {
        this.witness = witness;
        this.how = how;
        for (Observation seen : archive.observations()) {
            if (seen.witness().equals(witness.id()) && seen.origin().equals(how.origin())) {
                known.put(seen.place(), seen.id());
            }
        }
    }

    /**
     * The looks of a sitting.
     *
     * @param like what another horn showed, taken over wherever no stroke says otherwise, without its thicknesses; null
     *     for none
     */
    public List<Observation> of(List<Stroke> strokes, @Nullable List<Observation> like) {
        List<Observation> looks = new ArrayList<>();
        Set<String> painted = new HashSet<>();
        for (Stroke stroke : strokes) {
            for (String place : stroke.places()) {
                if (painted.add(place)) {
                    looks.add(look(stroke.name(), place, stroke.sight()));
                }
            }
        }
        for (Observation seen : like == null ? List.<Observation>of() : like) {
            if (painted.add(seen.place())) {
                looks.add(look("like", seen.place(), Sight.of(seen)));
            }
        }
        return looks;
    }

    private Observation look(String stroke, String place, Sight sight) {
        String fresh = witness.id() + "." + stroke + "." + place;
        return new Observation(
                known.getOrDefault(place, fresh),
                witness.id(),
                place,
                sight.material(),
                sight.colour(),
                sight.thicknessAtLeastMm(),
                sight.adhesive(),
                sight.shape(),
                sight.cut(),
                how.means(),
                how.hand(),
                how.bearing(),
                how.origin(),
                how.interest(),
                how.citation(),
                how.file());
    }
}
