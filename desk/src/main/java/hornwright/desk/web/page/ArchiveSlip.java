package hornwright.desk.web.page;

import hornwright.desk.web.view.Frame.Compartment;
import java.util.List;
import java.util.stream.Stream;

/** The sheets of the archive's compartment. */
enum ArchiveSlip {
    EVIDENCE("/archive", "Evidence"),
    AS_BUILT("/archive/as-built", "As built"),
    FITS("/archive/fits", "What fits"),
    IMPORT("/archive/import", "From a table"),
    SHARE("/archive/share", "Sharing"),
    HISTORY("/archive/history", "History");

    private final String address;
    private final String title;

    ArchiveSlip(String address, String title) {
        this.address = address;
        this.title = title;
    }

    /** None on a page that is not of the archive. */
    static List<Compartment> at(String path) {
        if (!path.equals("/archive") && !path.startsWith("/archive/")) {
            return List.of();
        }
        ArchiveSlip current = Stream.of(values())
                .filter(slip -> slip.address.equals(path))
                .findFirst()
                .orElse(path.equals("/archive/place") ? AS_BUILT : EVIDENCE);
        return Stream.of(values())
                .map(slip -> new Compartment(slip.title, slip.address, "", slip == current))
                .toList();
    }
}
