package hornwright.desk.web.photo;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.PhotoForm;
import hornwright.desk.web.view.PhotoPrint;
import java.util.List;

/**
 * One photograph. Question: what is to be seen here, and where on the horn is it?
 *
 * @param cells the picture as a grid of touch points, for pointing without a pointer's precision
 */
public record PhotoPage(
        Frame frame,
        String horn,
        String id,
        String title,
        String line,
        PhotoPrint print,
        List<Pointed> marks,
        List<Cell> cells,
        List<PhotoForm.Section> places,
        long seq,
        String fresh,
        String said) {
    public PhotoPage {
        marks = List.copyOf(marks);
        cells = List.copyOf(cells);
        places = List.copyOf(places);
    }

    /** A mark: its number on the picture, the place, and where, in pixels of the picture. */
    public record Pointed(int number, String place, String name, String address, double x, double y, double ring) {}

    /** One touch point: its middle as shares of width and height, and how it is called. */
    public record Cell(String at, String label) {}
}
