package hornwright.desk.use;

import hornwright.bench.job.PhotoTicked;
import org.jspecify.annotations.Nullable;

/** Ticks a photograph of the list, with the picture when there is one. */
public record TickPhoto(Shop shop) {
    /** @param file name of the picture in the store, as {@link KeepFile} gave it; null when it lies elsewhere */
    public Saved tick(String jobId, Form form, String shot, @Nullable String file) {
        return shop.saveJob(jobId, form, new PhotoTicked(shot, true, file));
    }

    public Saved untick(String jobId, Form form, String shot) {
        return shop.saveJob(jobId, form, new PhotoTicked(shot, false, null));
    }
}
