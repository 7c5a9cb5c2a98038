package hornwright.bench.job;

/** A note on the job or on one of its places; {@code about} is {@code job} or a place's id. An empty text takes it away. */
@Kind(word = "note-written")
public record NoteWritten(String about, String text) implements JobEdit {
    @Override
    public Fields fields() {
        return Fields.of("note." + about);
    }

    @Override
    public String inWords() {
        return "note on %s: %s".formatted(about, text.isEmpty() ? "taken away" : text);
    }
}
