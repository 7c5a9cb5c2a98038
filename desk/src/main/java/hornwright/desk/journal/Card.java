package hornwright.desk.journal;

/**
 * One line of the shelf, for lists and the search; it follows from the job and can be rebuilt.
 *
 * @param seq how far the job had come when the card was written
 * @param position of the job's last edit in the journal; the larger, the later
 * @param owner a person's id, or empty
 * @param words everything the search looks through
 */
public record Card(
        String job,
        long seq,
        long position,
        String title,
        String voice,
        String serial,
        String owner,
        String stage,
        int readings,
        int findings,
        String words) {}
