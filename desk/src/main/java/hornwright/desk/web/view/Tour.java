package hornwright.desk.web.view;

/**
 * What the tour says on a page.
 *
 * @param stop 1 to 5; 0 when nobody is on the tour
 * @param invited whether to ask if one would like it
 * @param words what there is to see here; empty on a page that is no stop
 * @param page the name of this stop
 * @param there where the stop is, when it is not here; empty when that cannot be known
 * @param next the name of the stop after it; empty after the last
 * @param onward where that is; empty when there is no horn to show it on
 * @param resume a stop at which it was left, to go on from; 0 when there is none
 */
public record Tour(
        int stop, boolean invited, String words, String page, String there, String next, String onward, int resume) {
    public boolean here() {
        return !words.isEmpty();
    }
}
