package hornwright.desk.web.measure;

import hornwright.bench.job.Job;
import hornwright.bench.plan.measured.ReadNumbers;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.Unit;
import hornwright.desk.units.LengthUnit;
import hornwright.desk.use.Form;
import hornwright.desk.use.RecordReading;
import hornwright.desk.use.WithdrawReading;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Units;
import hornwright.desk.web.view.OnBench;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The fields of a sheet that were sent: kept one by one; what is not understood comes back with a sentence. */
public final class TypedReadings {
    private final Desk desk;
    private final Context context;

    public TypedReadings(Desk desk, Context context) {
        this.desk = desk;
        this.context = context;
    }

    /** Keeps every field whose text has changed. */
    public Map<String, MeasureGrid.Typing> keep(OnBench bench) {
        Map<String, MeasureGrid.Typing> troubles = new LinkedHashMap<>();
        Form form = Desk.form(context);
        int count = 0;
        for (ReadingForm field : fields()) {
            Optional<Reading> before = before(bench.job(), field);
            if (field.text().equals(before.map(MeasureGrid::typed).orElse(""))) {
                continue;
            }
            Form own = new Form(form.expectedSeq() + count, form.hand(), form.key() + "-" + count);
            String fault = keep(bench, field, before, own, Units.of(context));
            if (fault.isEmpty()) {
                count++;
            } else {
                troubles.put(field.name(), new MeasureGrid.Typing(field.text(), fault));
            }
        }
        return troubles;
    }

    /** What is being typed as a reading; nothing when that cannot be read yet. */
    Optional<Reading> typing(OnBench bench) {
        String name = Objects.requireNonNullElse(context.queryParam("name"), "");
        String text = Objects.requireNonNullElse(context.queryParam("typed"), "");
        return ReadingForm.of(name, text)
                .filter(field -> !field.text().isEmpty())
                .flatMap(field -> field.read(bench, Units.of(context)) instanceof ReadingForm.Outcome.Reads reads
                        ? Optional.of(ReadingForm.ahead(with(reads.typed()), bench))
                        : Optional.empty());
    }

    /** The readings as they would be with what is being typed; nothing when that cannot be read yet. */
    public Optional<List<Reading>> ahead(OnBench bench) {
        return typing(bench).map(typed -> {
            List<Reading> others = new ArrayList<>(bench.job().readings().current());
            others.removeIf(reading -> reading.kind() == typed.kind()
                    && reading.of().equals(typed.of())
                    && reading.point().equals(typed.point()));
            others.add(typed);
            return others;
        });
    }

    public List<ReadingForm> fields() {
        return context.formParamMap().entrySet().stream()
                .filter(entry -> !entry.getValue().isEmpty())
                .flatMap(
                        entry -> ReadingForm.of(entry.getKey(), entry.getValue().getFirst()).stream())
                .toList();
    }

    private String keep(OnBench bench, ReadingForm field, Optional<Reading> before, Form form, LengthUnit usual) {
        if (field.text().isEmpty()) {
            Desk.kept(new WithdrawReading(desk.shop())
                    .withdraw(bench.id(), form, before.orElseThrow().id(), "taken out of the sheet"));
            return "";
        }
        return switch (field.read(bench, usual)) {
            case ReadingForm.Outcome.Unclear unclear -> unclear.sentence();
            case ReadingForm.Outcome.Reads reads -> {
                Desk.kept(new RecordReading(desk.shop()).record(bench.id(), form, with(reads.typed())));
                yield "";
            }
        };
    }

    /** Said to be read with another instrument than the usual one, if the shop has a rule for that. */
    private RecordReading.Typed with(RecordReading.Typed typed) {
        String with = context.formParam("with") == null ? context.queryParam("with") : context.formParam("with");
        Unit unit = typed.kind().unit();
        return with != null
                        && unit != null
                        && ReadNumbers.instruments(desk.shop().house().state().rules(), unit)
                                .contains(with)
                ? typed.with(with)
                : typed;
    }

    private static Optional<Reading> before(Job job, ReadingForm field) {
        return job.readings().current().stream()
                .filter(reading -> isOf(reading, field))
                .reduce((first, second) -> second);
    }

    private static boolean isOf(Reading reading, ReadingForm field) {
        return reading.kind() == field.kind()
                && reading.of().equals(field.of())
                && reading.point().equals(field.point());
    }
}
