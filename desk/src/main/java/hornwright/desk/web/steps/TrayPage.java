package hornwright.desk.web.steps;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import java.util.List;

/** Off and on. Question: which rod is drawn next, where does it lie, and what comes off to reach one key? */
public record TrayPage(
        Frame frame,
        Next next,
        String horn,
        List<TrayRow> trays,
        List<Choice> keys,
        String reached,
        List<String> drawn) {
    public TrayPage {
        trays = List.copyOf(trays);
        keys = List.copyOf(keys);
        drawn = List.copyOf(drawn);
    }

    /** A tray with its bags. */
    public record TrayRow(String name, List<Bag> bags) {
        public TrayRow {
            bags = List.copyOf(bags);
        }
    }

    /**
     * A bag.
     *
     * @param off its turn coming off
     * @param on its turn going on again
     * @param after what must be off before; empty when nothing
     */
    public record Bag(int off, int on, String rod, String keys, String after) {}

    public record Choice(String key, String name, boolean chosen) {}
}
