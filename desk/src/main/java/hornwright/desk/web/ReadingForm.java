package hornwright.desk.web;

import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Unit;
import hornwright.desk.units.Forces;
import hornwright.desk.units.LengthUnit;
import hornwright.desk.units.Lengths;
import hornwright.desk.units.Typed;
import hornwright.desk.use.RecordReading;
import hornwright.desk.web.view.Likely;
import hornwright.desk.web.view.MeasureGrid;
import hornwright.desk.web.view.OnBench;
import java.util.Optional;

/**
 * One field of the measuring grid: its name says what is measured where, its text what was read.
 *
 * @param name {@code r/KIND/of/point}
 */
record ReadingForm(String name, ReadingKind kind, String of, String point, String text) {

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
        Unit unit = kind.unit();
        if (kind.says() != Observed.Amount.class || unit == null) {
            return new Outcome.Unclear("This is not measured on this page.");
        }
        return switch (unit == Unit.NEWTON ? Forces.read(text) : Lengths.read(text, usual)) {
            case Typed.Unclear unclear -> new Outcome.Unclear(unclear.sentence());
            case Typed.Amount amount ->
                amount(bench, usual, unit, amount.value().doubleValue());
        };
    }

    private Outcome amount(OnBench bench, LengthUnit usual, Unit unit, double value) {
        if (value <= 0) {
            return new Outcome.Unclear("A %s is more than 0; this reads %s.".formatted(kind.word(), text));
        }
        Optional<String> question = Likely.question(text, value, MeasureGrid.expected(bench, kind, of));
        return question.<Outcome>map(Outcome.Unclear::new)
                .orElseGet(() -> new Outcome.Reads(
                        RecordReading.Typed.of(kind, of, point, new Observed.Amount(value, unit, null), raw(usual))));
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
                typed.kind().usualInstrument(),
                typed.raw(),
                "",
                null,
                bench.job().stage(),
                null);
    }
}
