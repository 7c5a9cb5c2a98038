package hornwright.desk.json;

/**
 * One thing wrong with an input.
 *
 * @param pointer JSON pointer to the place (RFC 6901), empty for the whole input
 * @param what what is wrong, in words, with the offending value
 * @param example what would be right
 */
public record Fault(String pointer, String what, String example) {

    /** The line for people: pointer, what is wrong, an example of what is right. */
    public String line() {
        String where = pointer.isEmpty() ? "/" : pointer;
        return where + ": " + what + (example.isEmpty() ? "" : "; right would be " + example);
    }

    /** The same fault seen from an enclosing input: its pointer gains a prefix such as {@code #2}. */
    public Fault within(String prefix) {
        return new Fault(prefix + pointer, what, example);
    }
}
