package hornwright.desk.cli;

/** The version of the program; plans and signatures carry it. */
public final class Version {
    public static final String NUMBER = "0.1.0";

    private Version() {}
}
