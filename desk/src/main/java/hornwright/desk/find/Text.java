package hornwright.desk.find;

/**
 * Something with words on it.
 *
 * @param sort what it is: a horn, a note
 * @param title what a person calls it
 * @param detail the words under it
 * @param address where it is shown
 * @param more words it is found by that are not shown
 */
public record Text(Sort sort, String title, String detail, String address, String more) {
    /** In the order they are shown. */
    public enum Sort {
        HORN("Horns"),
        PLACE("Places on this horn"),
        FOUND("Found on a horn"),
        NOTE("Notes"),
        STAMP("Stamps and words read"),
        GOODS("Goods on the shelf"),
        EVIDENCE("Evidence"),
        RULE("Rules of the shop"),
        PAGE("Pages");

        private final String title;

        Sort(String title) {
            this.title = title;
        }

        public String title() {
            return title;
        }
    }

    public Text(Sort sort, String title, String detail, String address) {
        this(sort, title, detail, address, "");
    }
}
