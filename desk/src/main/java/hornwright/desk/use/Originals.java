package hornwright.desk.use;

import hornwright.bench.job.StreamName;
import hornwright.bench.survey.Photo;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Photographs as the camera wrote them, with place, time and camera. They are kept only where somebody ticked it, shown on
 * no page, and leave only where somebody ticks it again.
 */
final class Originals {
    /** Not a picture's, so that no page hands one out. */
    static final String MEDIA = "application/octet-stream";

    static final String FOLDER = "originals/";

    private final Shop shop;
    private final Map<String, String> byPicture = new ConcurrentHashMap<>();

    Originals(Shop shop) {
        this.shop = shop;
        shop.data().journal().streams().stream()
                .filter(StreamName::isJob)
                .flatMap(stream -> shop.job(stream.jobId()).state().stream())
                .flatMap(job -> job.keeping().photos().values().stream())
                .filter(photo -> photo.original() != null)
                .forEach(this::note);
    }

    private void note(Photo photo) {
        byPicture.put(photo.file(), Objects.requireNonNull(photo.original()));
    }

    /** A file as it came, with the ending of its kind. */
    record Raw(byte[] bytes, String ending) {}

    /** The camera's file behind a picture that was written anew. */
    Optional<Raw> of(String picture) {
        return Optional.ofNullable(byPicture.get(picture))
                .flatMap(name -> new KeepFile(shop).read(name))
                .map(bytes -> new Raw(bytes, bytes.length > 0 && bytes[0] == (byte) 0x89 ? ".png" : ".jpg"));
    }
}
