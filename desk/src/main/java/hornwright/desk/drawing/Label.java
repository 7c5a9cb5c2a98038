package hornwright.desk.drawing;

/**
 * A name beside its cup.
 *
 * @param cup id of the cup
 * @param text the trade name
 * @param centre of the text
 * @param size of the type in units
 * @param width of the text as drawn, along the line of writing
 * @param leader where a line to the cup begins, on the edge of the cup
 * @param far whether the label stands so far off that it needs the line
 */
public record Label(String cup, String text, Spot centre, double size, double width, Spot leader, boolean far) {}
