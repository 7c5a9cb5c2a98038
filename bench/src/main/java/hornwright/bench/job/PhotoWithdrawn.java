package hornwright.bench.job;

/** A photograph that is not to be shown: blurred, or of another horn. Its file stays for as long as history does. */
@Kind(word = "photo-withdrawn")
public record PhotoWithdrawn(String photo) implements JobEdit {
    @Override
    public Fields fields() {
        return Fields.of("picture." + photo);
    }

    @Override
    public String inWords() {
        return "photograph taken out";
    }
}
