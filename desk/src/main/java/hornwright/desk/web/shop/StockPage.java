package hornwright.desk.web.shop;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.PlacePanel;
import java.util.List;

/** The shelf of goods. Question: what lies there, and how many? */
public record StockPage(
        Frame frame,
        List<Kind> kinds,
        List<PlacePanel.Option> choices,
        Entry entry,
        String said,
        long seq,
        String fresh) {
    public StockPage {
        kinds = List.copyOf(kinds);
        choices = List.copyOf(choices);
    }

    public record Kind(String title, List<Made> materials) {
        public Kind {
            materials = List.copyOf(materials);
        }
    }

    /** Goods of one material, by size. */
    public record Made(String material, List<Line> lines) {
        public Made {
            lines = List.copyOf(lines);
        }
    }

    /**
     * @param fits where such a one is said to go, and how good that is; empty when nobody said
     * @param key the key of a count saved for this line
     */
    public record Line(String id, String size, String thickness, String count, String fits, String key) {}

    /** What stands in the form for a new line, with what is wrong with it. */
    public record Entry(
            String kind,
            String material,
            String diameter,
            String thickness,
            String count,
            String price,
            List<String> faults) {
        public static final Entry EMPTY = new Entry("", "", "", "", "", "", List.of());

        public Entry {
            faults = List.copyOf(faults);
        }
    }
}
