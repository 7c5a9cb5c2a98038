package hornwright.bench.job;

import hornwright.bench.survey.Photo;
import hornwright.bench.survey.StoredPart;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is kept of a horn beside its papers: photographs by their id, removed originals by their place. In the order they
 * came.
 */
public record Keeping(Map<String, Photo> photos, Map<String, StoredPart> parts) {
    public static final Keeping NONE = new Keeping(Map.of(), Map.of());

    public Keeping {
        photos = Collections.unmodifiableMap(new LinkedHashMap<>(photos));
        parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
    }

    /** The photographs that show this place or point at it. */
    public List<Photo> photosOf(String place) {
        return photos.values().stream().filter(photo -> photo.shows(place)).toList();
    }

    Keeping original(String photo, String file) {
        Photo before = photos.get(photo);
        return before == null ? this : with(before.withOriginal(file));
    }

    /** The same photographs without the cameras' own files. */
    Keeping withoutOriginals() {
        Map<String, Photo> changed = new LinkedHashMap<>(photos);
        changed.replaceAll((id, photo) -> photo.withoutOriginal());
        return new Keeping(changed, parts);
    }

    Keeping with(Photo photo) {
        Map<String, Photo> changed = new LinkedHashMap<>(photos);
        changed.put(photo.id(), photo);
        return new Keeping(changed, parts);
    }

    Keeping marked(String photo, List<Photo.Mark> marks) {
        Photo before = photos.get(photo);
        return before == null ? this : with(before.marked(marks));
    }

    Keeping withoutPhoto(String photo) {
        Map<String, Photo> changed = new LinkedHashMap<>(photos);
        changed.remove(photo);
        return new Keeping(changed, parts);
    }

    /** A part without a store place is no longer kept. */
    Keeping with(StoredPart part) {
        Map<String, StoredPart> changed = new LinkedHashMap<>(parts);
        if (part.store().isEmpty()) {
            changed.remove(part.place());
        } else {
            changed.put(part.place(), part);
        }
        return new Keeping(photos, changed);
    }
}
