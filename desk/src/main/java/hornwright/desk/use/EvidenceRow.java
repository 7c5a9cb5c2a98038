package hornwright.desk.use;

import hornwright.bench.archive.Bearing;
import hornwright.bench.archive.Edtf;
import hornwright.bench.archive.Hand;
import hornwright.bench.archive.Integrity;
import hornwright.bench.archive.Interest;
import hornwright.bench.archive.Means;
import hornwright.bench.archive.Method;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Origin;
import hornwright.bench.archive.Witness;
import hornwright.bench.horn.Voice;
import hornwright.bench.horn.Word;
import hornwright.desk.csv.CsvTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads one row of a table of evidence: the horn and what was seen at one place of it. Every fault of the row is told. */
final class EvidenceRow {
    private final CsvTable.Row row;
    private final Map<EvidenceColumn, Integer> columns;
    private final List<ImportEvidence.CellFault> faults = new ArrayList<>();

    EvidenceRow(CsvTable.Row row, Map<EvidenceColumn, Integer> columns) {
        this.row = row;
        this.columns = columns;
    }

    List<ImportEvidence.CellFault> faults() {
        return faults;
    }

    /** @param maker of the horns when the table has no such column */
    Witness witness(String maker) {
        String own = text(EvidenceColumn.MAKER).isEmpty() ? maker : text(EvidenceColumn.MAKER);
        long serial = serial();
        Voice voice = choice(EvidenceColumn.VOICE, Voice.class, Voice.ALTO);
        return new Witness(
                "w-%d-%s".formatted(serial, mark(own + "|" + voice.word())),
                serial,
                voice,
                own,
                text(EvidenceColumn.MODEL),
                built(),
                choice(EvidenceColumn.INTEGRITY, Integrity.class, Integrity.UNKNOWN),
                Map.of());
    }

    /** Four letters that tell horns of one number but of two makers apart. */
    private static String mark(String says) {
        String id = FreshId.of("m", new Form(0, OpenShop.PROGRAM, says));
        return id.substring(id.length() - 4);
    }

    Observation look(Witness of) {
        Means.Examined means = new Means.Examined(
                choice(EvidenceColumn.METHOD, Method.class, Method.SEEN), yes(EvidenceColumn.UNALTERED));
        String origin = text(EvidenceColumn.ORIGIN);
        Observation look = new Observation(
                "",
                of.id(),
                needed(EvidenceColumn.PLACE),
                needed(EvidenceColumn.MATERIAL),
                orNull(EvidenceColumn.COLOUR),
                thickness(),
                orNull(EvidenceColumn.ADHESIVE),
                null,
                null,
                means,
                choice(EvidenceColumn.HAND, Hand.class, Hand.UNKNOWN),
                Bearing.DIRECT,
                new Origin(origin.isEmpty() ? "horn " + of.serial() : origin, means.kind()),
                choice(EvidenceColumn.INTEREST, Interest.class, Interest.NEUTRAL),
                orNull(EvidenceColumn.CITATION),
                null);
        return named(look, of);
    }

    /** Called by what it says, so that the same look brought in again is the same. */
    private static Observation named(Observation look, Witness of) {
        String says = of.maker() + "|" + look;
        String id = FreshId.of("e", new Form(0, OpenShop.PROGRAM, says));
        return new Observation(
                id,
                look.witness(),
                look.place(),
                look.material(),
                look.colour(),
                look.thicknessAtLeastMm(),
                look.adhesive(),
                look.shape(),
                look.cut(),
                look.means(),
                look.hand(),
                look.bearing(),
                look.origin(),
                look.interest(),
                look.citation(),
                look.file());
    }

    void fault(EvidenceColumn column, String what) {
        faults.add(new ImportEvidence.CellFault(row.line(), column.word(), what, column.example()));
    }

    private long serial() {
        String text = needed(EvidenceColumn.SERIAL);
        if (!text.isEmpty() && !text.matches("\\d{1,9}")) {
            fault(EvidenceColumn.SERIAL, "a serial is digits only; this reads \"%s\"".formatted(text));
            return 0;
        }
        return text.isEmpty() ? 0 : Long.parseLong(text);
    }

    private @Nullable Edtf built() {
        String text = text(EvidenceColumn.BUILT);
        try {
            return text.isEmpty() ? null : Edtf.parse(text);
        } catch (IllegalArgumentException wrong) {
            fault(EvidenceColumn.BUILT, String.valueOf(wrong.getMessage()));
            return null;
        }
    }

    /** With a point or a comma; what could be read in two ways is asked back. */
    private @Nullable Double thickness() {
        String text = text(EvidenceColumn.THICKNESS).replaceFirst("\\s*mm$", "");
        if (text.isEmpty()) {
            return null;
        }
        if (!text.matches("\\d{1,3}([.,]\\d{1,4})?")) {
            fault(EvidenceColumn.THICKNESS, "\"%s\" is no thickness in millimetres".formatted(text));
            return null;
        }
        double mm = Double.parseDouble(text.replace(',', '.'));
        if (mm > 30) {
            fault(EvidenceColumn.THICKNESS, "%s mm is thicker than anything on a horn".formatted(text));
            return null;
        }
        return mm;
    }

    private boolean yes(EvidenceColumn column) {
        String text = text(column).toLowerCase(Locale.ROOT);
        if (!List.of("", "yes", "no", "true", "false", "1", "0").contains(text)) {
            fault(column, "\"%s\" is neither yes nor no".formatted(text));
        }
        return List.of("yes", "true", "1").contains(text);
    }

    private <E extends Enum<E> & Word> E choice(EvidenceColumn column, Class<E> type, E otherwise) {
        String text = (column.isNeeded() ? needed(column) : text(column)).toLowerCase(Locale.ROOT);
        if (text.isEmpty()) {
            return otherwise;
        }
        return Arrays.stream(type.getEnumConstants())
                .filter(one -> one.word().equals(text) || one.word().startsWith(text + " "))
                .findFirst()
                .orElseGet(() -> {
                    fault(
                            column,
                            "\"%s\" is none of %s"
                                    .formatted(
                                            text,
                                            String.join(
                                                    ", ",
                                                    Arrays.stream(type.getEnumConstants())
                                                            .map(Word::word)
                                                            .toList())));
                    return otherwise;
                });
    }

    private String needed(EvidenceColumn column) {
        String text = text(column);
        if (text.isEmpty()) {
            fault(column, "this cell is empty");
        }
        return text;
    }

    private @Nullable String orNull(EvidenceColumn column) {
        String text = text(column);
        return text.isEmpty() ? null : text;
    }

    private String text(EvidenceColumn column) {
        Integer at = columns.get(column);
        return at == null ? "" : row.cell(at).strip();
    }
}
