package hornwright.desk.web.photo;

import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PhotoPrint;
import java.util.List;

/**
 * The photographs of one thing, and where another is put in.
 *
 * @param put address of the form
 */
public record PhotosOf(String name, List<PhotoPrint> prints, String put) {
    public PhotosOf {
        prints = List.copyOf(prints);
    }

    public static PhotosOf of(OnBench bench, String subject) {
        PhotoRows rows = new PhotoRows(bench);
        return new PhotosOf(bench.pictured(subject), rows.of(subject), rows.putAddress(subject));
    }
}
