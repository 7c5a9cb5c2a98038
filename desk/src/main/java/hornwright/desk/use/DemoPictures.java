package hornwright.desk.use;

import hornwright.bench.job.JobEdit;
import hornwright.bench.job.PartStored;
import hornwright.bench.job.PhotoMarked;
import hornwright.bench.job.PhotoTaken;
import hornwright.bench.survey.Moment;
import hornwright.bench.survey.Photo;
import hornwright.desk.picture.CleanPicture;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Three pictures of the demo horn, and the pad they show in its bag. They are drawn, and say so in their corner; no horn
 * and no camera was there.
 */
record DemoPictures(Shop shop) {
    private static final int WIDTH = 960;
    private static final int HEIGHT = 720;
    private static final String CUP = "pad.low-b";

    void put(String job) {
        shop.saveJob(
                job,
                new Form(shop.job(job).seq(), OpenShop.PROGRAM, "demo pictures"),
                taken("f.demo-serial", "serial", Moment.BEFORE, "serial", null),
                taken("f.demo-low-b", "pad-low-b-before", Moment.BEFORE, null, CUP),
                taken("f.demo-low-b-trial", "pad-low-b-trial", Moment.DURING, null, CUP),
                marked("f.demo-low-b", "resonator.low-b", 0.49, 0.486),
                new PartStored(CUP, "kid leather over woven wool felt, torn", "drawer 3, box 41207"));
    }

    private JobEdit taken(String id, String picture, Moment moment, @Nullable String shot, @Nullable String place) {
        String file =
                new KeepFile(shop).keep(bytes(picture), CleanPicture.MEDIA).sha256();
        return new PhotoTaken(id, file, file, WIDTH, HEIGHT, moment, shot, place);
    }

    private static JobEdit marked(String photo, String place, double x, double y) {
        return new PhotoMarked(photo, List.of(new Photo.Mark(place, x, y)));
    }

    private static byte[] bytes(String picture) {
        String path = "/hornwright/demo/pictures/" + picture + ".jpg";
        try (InputStream in = DemoPictures.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException(path + " is missing from the program");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
