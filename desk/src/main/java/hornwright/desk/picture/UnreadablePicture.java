package hornwright.desk.picture;

/** A file that is not taken as a photograph; the sentence says why and what to do. */
public final class UnreadablePicture extends RuntimeException {
    UnreadablePicture(String sentence) {
        super(sentence);
    }

    public String sentence() {
        return String.valueOf(getMessage());
    }
}
