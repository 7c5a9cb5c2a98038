package hornwright.desk.use;

import hornwright.desk.bag.Bag;
import hornwright.desk.bag.UnreadableBag;
import hornwright.desk.picture.CleanPicture;
import hornwright.desk.picture.Darkroom;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Pictures in a bag: only those that are what they are named by, and carry no place, camera or page. */
final class SharedPhotos {
    static final String FOLDER = "photos/";

    private SharedPhotos() {}

    /** By their hash. The camera's own files are for a person to look at and are never taken in. */
    static Map<String, byte[]> of(Bag bag) {
        Map<String, byte[]> photos = new TreeMap<>();
        List<String> faults = new ArrayList<>();
        bag.files().forEach((path, bytes) -> {
            if (path.startsWith(FOLDER)) {
                String hash = path.substring(FOLDER.length()).replaceFirst("\\.jpg$", "");
                if (!KeepFile.nameOf(bytes).equals(hash)) {
                    faults.add("The photograph %s is not the one it is named by.".formatted(path));
                } else if (!Darkroom.isClean(bytes)) {
                    faults.add("The photograph %s is no JPEG, or carries more than the picture.".formatted(path));
                }
                photos.put(hash, bytes);
            }
        });
        if (!faults.isEmpty()) {
            throw new UnreadableBag(faults);
        }
        return photos;
    }

    static void keep(Shop shop, Map<String, byte[]> photos) {
        photos.values().forEach(bytes -> new KeepFile(shop).keep(bytes, CleanPicture.MEDIA));
    }
}
