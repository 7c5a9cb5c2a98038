package hornwright.bench.job;

import hornwright.bench.survey.Moment;
import hornwright.bench.survey.Photo;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A photograph was put in.
 *
 * @param file name of the upright picture in the store
 * @param small name of its small copy
 * @param shot which one of the list it is, if any
 * @param place the place it was taken of, if it was
 */
@Kind(word = "photo-taken")
public record PhotoTaken(
        String id,
        String file,
        String small,
        int width,
        int height,
        Moment moment,
        @Nullable String shot,
        @Nullable String place)
        implements JobEdit {
    Photo stamped(Posted posted) {
        return new Photo(id, file, small, width, height, moment, shot, place, posted.at(), List.of(), null);
    }

    @Override
    public Fields fields() {
        return Fields.of("picture." + id);
    }

    @Override
    public String inWords() {
        String of = shot != null ? "photograph " + shot : place != null ? "photograph of " + place : "photograph";
        return of + ", " + moment.word();
    }
}
