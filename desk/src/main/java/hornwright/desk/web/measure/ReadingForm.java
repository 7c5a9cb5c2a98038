package hornwright.desk.web.measure;

import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Unit;
import hornwright.desk.units.LengthUnit;
import hornwright.desk.units.Readings;
import hornwright.desk.use.RecordReading;
import hornwright.desk.web.view.Likely;
import hornwright.desk.web.view.OnBench;
import java.util.Optional;

/**
 * One field of the measuring grid: its name says what is measured where, its text what was read.
 *
 * @param name {@code r/KIND/of/point}
 */
public record ReadingForm(String name, ReadingKind kind, String of, String point, String text) {

    /** What came of a field: a reading to keep, or a sentence why not. */
    sealed interface Outcome {
        record Reads(RecordReading.Typed typed) implements Outcome {}

        record Unclear(String sentence) implements Outcome {}
    }

    static Optional<ReadingForm> of(String name, String text) {
        String[] parts = name.split("/", 4);
        if (parts.length != 4 || !parts[0].equals("r") || parts[3].length() > 100) {
            return Optional.empty();
        }
        for (ReadingKind kind : ReadingKind.values()) {
            if (kind.name().equals(parts[1])) {
                return Optional.of(new ReadingForm(name, kind, parts[2], parts[3], text.strip()));
            }
        }
        return Optional.empty();
    }

    Outcome read(OnBench bench, LengthUnit usual) {
        return switch (Readings.read(kind, text, usual)) {
            case Readings.Outcome.Unclear unclear -> new Outcome.Unclear(unclear.sentence());
            case Readings.Outcome.Says says -> likely(bench, usual, says.observed());
        };
    }

    private Outcome likely(OnBench bench, LengthUnit usual, Observed observed) {
        Optional<String> question = observed instanceof Observed.Amount amount
                ? Likely.question(text, amount.value(), MeasureGrid.expected(bench, kind, of))
                : Optional.empty();
        return question.<Outcome>map(Outcome.Unclear::new)
                .orElseGet(() -> new Outcome.Reads(RecordReading.Typed.of(kind, of, point, observed, raw(usual))));
    }

    /** What was typed; a bare number in another unit than millimetres keeps the unit it was meant in. */
    private String raw(LengthUnit usual) {
        boolean bare = text.matches("[\\d.,+-]+");
        return bare && usual != LengthUnit.MILLIMETRE && kind.unit() == Unit.MILLIMETRE
                ? text + " " + usual.symbol()
                : text;
    }

    /** The reading as a plan would see it, for looking ahead while typing. */
    static Reading ahead(RecordReading.Typed typed, OnBench bench) {
        return new Reading(
                "r.ahead",
                typed.kind(),
                typed.of(),
                typed.point(),
                typed.observed(),
                typed.instrument().isEmpty() ? typed.kind().usualInstrument() : typed.instrument(),
                typed.raw(),
                "",
                null,
                bench.job().stage(),
                null);
    }
}
