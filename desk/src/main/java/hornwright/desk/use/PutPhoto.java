package hornwright.desk.use;

import hornwright.bench.body.Pictured;
import hornwright.bench.horn.Keywork;
import hornwright.bench.job.Job;
import hornwright.bench.job.JobEdit;
import hornwright.bench.job.OriginalKept;
import hornwright.bench.job.PhotoMarked;
import hornwright.bench.job.PhotoTaken;
import hornwright.bench.job.PhotoWithdrawn;
import hornwright.bench.survey.Moment;
import hornwright.bench.survey.Photo;
import hornwright.bench.survey.Shot;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Faults;
import hornwright.desk.picture.CleanPicture;
import hornwright.desk.picture.Darkroom;
import hornwright.desk.picture.UnreadablePicture;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Puts photographs in, points at places on them, and takes them out of sight again. */
public record PutPhoto(Shop shop) {
    /** What they show: one of the list, a place, or neither; and when they were taken. */
    public record Shows(
            Moment moment, @Nullable String shot, @Nullable String place) {}

    /** Nothing of what the camera wrote is kept. */
    public Saved put(String jobId, Form form, List<byte[]> uploads, Shows shows) {
        return put(jobId, form, uploads, shows, false);
    }

    /**
     * All of them are developed before any is kept; one edit a photograph, all or none.
     *
     * @param originals whether the camera's own files are kept beside the pictures, shown to nobody
     */
    public Saved put(String jobId, Form form, List<byte[]> uploads, Shows shows, boolean originals) {
        Faults faults = new Faults();
        check(shop.jobNow(jobId), shows, faults);
        if (uploads.isEmpty()) {
            faults.add("/photos", "no photograph was chosen", "a JPEG or PNG file");
        }
        List<CleanPicture> pictures = developed(uploads, faults);
        faults.refuseIfAny();
        List<JobEdit> edits = new ArrayList<>();
        for (int i = 0; i < pictures.size(); i++) {
            PhotoTaken taken = kept(FreshId.of("f", form.part(i)), pictures.get(i), shows);
            edits.add(taken);
            if (originals) {
                String raw =
                        new KeepFile(shop).keep(uploads.get(i), Originals.MEDIA).sha256();
                edits.add(new OriginalKept(taken.id(), raw));
            }
        }
        return shop.saveJob(jobId, form, edits.toArray(JobEdit[]::new));
    }

    private PhotoTaken kept(String id, CleanPicture picture, Shows shows) {
        KeepFile files = new KeepFile(shop);
        return new PhotoTaken(
                id,
                files.keep(picture.large(), CleanPicture.MEDIA).sha256(),
                files.keep(picture.small(), CleanPicture.MEDIA).sha256(),
                picture.width(),
                picture.height(),
                shows.moment(),
                shows.shot(),
                shows.place());
    }

    /** Points at a place; a place that is pointed at already is pointed at anew. */
    public Saved mark(String jobId, Form form, String photoId, Photo.Mark mark) {
        Faults faults = new Faults();
        check(shop.jobNow(jobId), new Shows(Moment.BEFORE, null, mark.place()), faults);
        if (!(mark.x() >= 0 && mark.x() <= 1 && mark.y() >= 0 && mark.y() <= 1)) {
            faults.add("/mark", "the mark lies beside the picture", "0.5,0.25");
        }
        faults.refuseIfAny();
        List<Photo.Mark> marks = new ArrayList<>(others(jobId, photoId, mark.place()));
        marks.add(mark);
        return shop.saveJob(jobId, form, new PhotoMarked(photoId, marks));
    }

    public Saved unmark(String jobId, Form form, String photoId, String place) {
        return shop.saveJob(jobId, form, new PhotoMarked(photoId, others(jobId, photoId, place)));
    }

    public Saved takeOut(String jobId, Form form, String photoId) {
        return shop.saveJob(
                jobId, form, new PhotoWithdrawn(named(jobId, photoId).id()));
    }

    private List<Photo.Mark> others(String jobId, String photoId, String place) {
        return named(jobId, photoId).marks().stream()
                .filter(mark -> !mark.place().equals(place))
                .toList();
    }

    private Photo named(String jobId, String photoId) {
        return Optional.ofNullable(shop.jobNow(jobId).keeping().photos().get(photoId))
                .orElseThrow(() ->
                        new BadInput("/photo", "this horn has no photograph \"" + photoId + "\"", "one of its own"));
    }

    private static List<CleanPicture> developed(List<byte[]> uploads, Faults faults) {
        List<CleanPicture> pictures = new ArrayList<>();
        for (int i = 0; i < uploads.size(); i++) {
            try {
                pictures.add(Darkroom.develop(uploads.get(i)));
            } catch (UnreadablePicture unreadable) {
                String which = uploads.size() == 1 ? "" : "Photograph %d: ".formatted(i + 1);
                faults.add("/photos/" + i, which + unreadable.sentence(), "a JPEG or PNG file");
            }
        }
        return pictures;
    }

    private static void check(Job job, Shows shows, Faults faults) {
        String shot = shows.shot();
        if (shot != null && Stream.of(Shot.values()).noneMatch(one -> one.id().equals(shot))) {
            faults.add("/shot", "there is no photograph \"" + shot + "\" on the list", "\"serial\"");
        }
        String place = shows.place();
        Keywork keywork = Keyworks.of(job);
        if (place != null
                && Pictured.name(keywork, job.readings().current(), place).isEmpty()) {
            faults.add(
                    "/place",
                    "this horn has no place \"" + place + "\"",
                    "\"" + keywork.places().list().getFirst().id() + "\"");
        }
    }
}
