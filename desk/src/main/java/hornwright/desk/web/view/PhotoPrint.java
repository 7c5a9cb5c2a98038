package hornwright.desk.web.view;

/** A photograph as it is shown: where it opens, which file, its size, what a listener hears, and a line under it. */
public record PhotoPrint(String address, String file, String small, int width, int height, String alt, String line) {
    /** The address of a small copy is enough in a list. */
    public String smallAddress() {
        return "/photo/" + small;
    }

    public String fileAddress() {
        return "/photo/" + file;
    }
}
