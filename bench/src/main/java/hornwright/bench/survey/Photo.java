package hornwright.bench.survey;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A photograph of the horn on the bench.
 *
 * @param file name of the upright picture in the store
 * @param small name of a small copy of it
 * @param width of the picture, in pixels
 * @param shot which one of the list it is; null when it is none of them
 * @param place the place it was taken of; null when it shows more
 * @param marks where on it places are to be seen
 * @param original name of the camera's own file in the store, with all it tells; null unless somebody asked to keep it
 */
public record Photo(
        String id,
        String file,
        String small,
        int width,
        int height,
        Moment moment,
        @Nullable String shot,
        @Nullable String place,
        Instant when,
        List<Mark> marks,
        @Nullable String original) {
    public Photo {
        marks = List.copyOf(marks);
    }

    /**
     * A place pointed at on a picture.
     *
     * @param x share of the width, from the left
     * @param y share of the height, from the top
     */
    public record Mark(String place, double x, double y) {}

    public Photo marked(List<Mark> changed) {
        return new Photo(id, file, small, width, height, moment, shot, place, when, changed, original);
    }

    /** The same without the camera's own file. */
    public Photo withoutOriginal() {
        return withOriginal(null);
    }

    public Photo withOriginal(@Nullable String name) {
        return new Photo(id, file, small, width, height, moment, shot, place, when, marks, name);
    }

    /** Whether this place was photographed here or is pointed at. */
    public boolean shows(String placeId) {
        return placeId.equals(place)
                || marks.stream().anyMatch(mark -> mark.place().equals(placeId));
    }

    /** The files it needs. */
    public Stream<String> files() {
        return Stream.of(file, small, original).filter(Objects::nonNull);
    }
}
