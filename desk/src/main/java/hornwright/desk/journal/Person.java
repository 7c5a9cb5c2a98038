package hornwright.desk.journal;

/** Somebody edits may name by {@code id}; everything else about them can be forgotten. What is not known is empty. */
public record Person(String id, String name, String address, String telephone, String email) {
    /** What is left of a person who asked to be forgotten: the id the edits carry, and nothing more. */
    static Person forgotten(String id) {
        return new Person(id, "", "", "", "");
    }
}
