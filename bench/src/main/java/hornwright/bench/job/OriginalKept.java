package hornwright.bench.job;

/**
 * The camera's own file was kept beside a photograph, because somebody asked for it.
 *
 * @param photo id of the photograph
 * @param file name of the camera's file in the store
 */
@Kind(word = "photo-original-kept")
public record OriginalKept(String photo, String file) implements JobEdit {
    @Override
    public Fields fields() {
        return Fields.of("picture." + photo);
    }

    @Override
    public String inWords() {
        return "the camera's own file of photograph %s kept".formatted(photo);
    }
}
