package hornwright.desk.web.page;

/**
 * The compartments of a horn's tray, in the order of the job. They are few on purpose: a further page becomes a {@link
 * Sheet} of one of these, not a compartment. One without sheets is not shown.
 */
public enum Bay {
    HORN("The horn"),
    ARRIVAL("Arrival"),
    SURVEY("Survey"),
    MEASURE("Measure"),
    PLAN("Plan"),
    WORK("Work"),
    SOUND("Sound"),
    HANDOVER("Hand-over");

    private final String title;

    Bay(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
