package hornwright.bench.archive;

import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Places of one kind on which the same horns showed the same, so that one band of the ruler tells all of them.
 *
 * @param places in the order of the keywork, at least one
 * @param course of the first; those of the others are like it
 * @param built of the first; material, grade and probability of the others are the same
 */
public record Family(PlaceKind kind, List<Place> places, Course course, AsBuiltAt built) {
    public Family {
        places = List.copyOf(places);
    }

    /** Every place anybody looked at, family by family in the order of its first place. */
    public static List<Family> of(Iterable<Place> places, Map<String, AsBuiltAt> built, Map<String, Course> courses) {
        List<Family> families = new ArrayList<>();
        for (Place place : places) {
            AsBuiltAt here = built.get(place.id());
            Course course = courses.get(place.id());
            if (here != null && course != null && !course.marks().isEmpty()) {
                join(families, new Family(place.kind(), List.of(place), course, here));
            }
        }
        return families;
    }

    private static void join(List<Family> families, Family one) {
        for (int i = 0; i < families.size(); i++) {
            Family family = families.get(i);
            if (family.takes(one)) {
                List<Place> more = new ArrayList<>(family.places());
                more.addAll(one.places());
                families.set(i, new Family(family.kind(), more, family.course(), family.built()));
                return;
            }
        }
        families.add(one);
    }

    /** A statement about one place only may give it another grade; then it stands by itself. */
    private boolean takes(Family other) {
        return kind == other.kind
                && built.grade() == other.built.grade()
                && Objects.equals(built.material(), other.built.material())
                && course.isLike(other.course);
    }
}
