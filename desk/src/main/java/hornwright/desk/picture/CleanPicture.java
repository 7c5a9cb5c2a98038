package hornwright.desk.picture;

/**
 * A photograph as it is kept: JPEGs that hold nothing but the picture.
 *
 * @param large upright, at most {@value Darkroom#LONGEST_KEPT} pixels a side
 * @param small a copy for lists
 * @param width of the large one
 */
public record CleanPicture(byte[] large, byte[] small, int width, int height) {
    public static final String MEDIA = "image/jpeg";
}
