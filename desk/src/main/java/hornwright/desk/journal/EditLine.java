package hornwright.desk.journal;

import hornwright.bench.job.Edit;
import hornwright.bench.job.StreamName;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;

/** An edit on a line of a file: {@code {"stream": …, "kind": …, "version": …, "edit": {…}}}. The demo is kept so. */
public record EditLine(StreamName stream, Edit edit) {

    /** Every line that is not blank; {@link Unusable} names the line that cannot be read. */
    public static List<EditLine> read(String lines) {
        return lines.lines().filter(line -> !line.isBlank()).map(EditLine::one).toList();
    }

    private static EditLine one(String line) {
        try {
            Written written = EditJson.mapper().readValue(line, Written.class);
            return new EditLine(
                    new StreamName(written.stream()),
                    EditJson.known(
                            written.kind(), written.version(), written.edit().toString()));
        } catch (JacksonException | Unusable e) {
            String start = line.substring(0, Math.min(80, line.length()));
            throw new Unusable("The line '%s…' cannot be read: %s".formatted(start, e.getMessage()), e);
        }
    }

    private record Written(String stream, String kind, int version, JsonNode edit) {}
}
