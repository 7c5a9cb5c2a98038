package hornwright.desk.web.archive;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The shop's table from serial to year. Question: when was this number made, and by which rows?
 *
 * @param graph the rows with the curve through them; empty with fewer than two rows
 * @param trouble why the table tells no year at all; mostly empty
 * @param asked the serial somebody asked for, as typed
 * @param answer null when nobody asked
 */
public record Years(
        List<Row> rows,
        String graph,
        String trouble,
        String asked,
        @Nullable Answer answer) {
    public Years {
        rows = List.copyOf(rows);
    }

    public record Row(String serial, String year, String source) {}

    /**
     * @param head "1938, between 1936 and 1939"
     * @param because the rows it rests on, and how
     */
    public record Answer(String head, List<String> because) {
        public Answer {
            because = List.copyOf(because);
        }
    }
}
