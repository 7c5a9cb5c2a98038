package hornwright.desk.web.page;

import hornwright.desk.web.view.Frame.Compartment;
import java.util.List;
import java.util.stream.Stream;

/** The pages of the shop as compartments of a tray; the tray of a horn takes its place on a horn's pages. */
enum ShopTray {
    SHELF("/", "Shelf", "the horns"),
    STOCK("/stock", "Stock", "goods and how many"),
    MATERIALS("/materials", "Materials", "cork, felt and pads"),
    ARCHIVE("/archive", "Archive", "what left the factory"),
    RULES("/rules", "Rules", "the numbers of this shop");

    private final String address;
    private final String title;
    private final String fact;

    ShopTray(String address, String title, String fact) {
        this.address = address;
        this.title = title;
        this.fact = fact;
    }

    /** @param path the path of the page that is shown */
    static List<Compartment> at(String path) {
        return Stream.of(values())
                .map(page -> new Compartment(page.title, page.address, page.fact, page.holds(path)))
                .toList();
    }

    private boolean holds(String path) {
        return path.equals(address) || (this != SHELF && path.startsWith(address + "/"));
    }
}
