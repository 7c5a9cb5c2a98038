package hornwright.desk.use;

import hornwright.bench.job.NoteWritten;

/** Writes a note on the job or on one of its places; an empty text takes it away. */
public record WriteNote(Shop shop) {
    /** @param about {@code job} or a place */
    public Saved write(String jobId, Form form, String about, String text) {
        return shop.saveJob(jobId, form, new NoteWritten(about, text));
    }
}
