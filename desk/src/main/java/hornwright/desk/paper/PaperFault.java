package hornwright.desk.paper;

/** A sheet that could not be printed as it should look. */
public final class PaperFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public PaperFault(String what) {
        super("This sheet cannot be printed as it should look: " + what);
    }
}
