package hornwright.desk.use;

import hornwright.bench.job.Job;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.GroupFinding;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PlayTest;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.WorkDone;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** A job as tables, by the name of their file. */
final class JobTables {
    private JobTables() {}

    static Map<String, Table> of(Job job, List<ShowHistory.Line> history) {
        Map<String, Table> tables = new TreeMap<>();
        tables.put(JobFolder.READINGS, readings(job));
        tables.put(JobFolder.FINDINGS, findings(job));
        tables.put(JobFolder.DECISIONS, decisions(job));
        tables.put(JobFolder.WORK, work(job));
        tables.put(JobFolder.NOTES, notes(job));
        tables.put(JobFolder.PLAY_TESTS, playTests(job));
        tables.put(JobFolder.HISTORY, history(history));
        return tables;
    }

    static Table readings(Job job) {
        Table table = Table.of(
                "what", "of", "point", "value", "unit", "u", "in words", "with", "typed", "when", "stage", "counts");
        job.readings().current().forEach(reading -> row(table, reading, "yes"));
        job.readings().former().forEach(reading -> row(table, reading, "replaced"));
        return table;
    }

    private static void row(Table table, Reading reading, String counts) {
        Observed.@Nullable Amount amount = reading.observed() instanceof Observed.Amount one ? one : null;
        table.row(
                reading.kind().word(),
                reading.of(),
                reading.point(),
                amount == null ? null : amount.value(),
                amount == null ? null : amount.unit().symbol(),
                amount == null ? null : amount.u(),
                reading.observed().inWords(),
                reading.instrument(),
                reading.raw(),
                reading.when(),
                reading.stage().word(),
                counts);
    }

    static Table findings(Job job) {
        Table table = Table.of(
                "place", "material", "thickness_mm", "colour", "condition", "originality", "number", "also", "missing");
        for (Finding f : job.findings().places()) {
            table.row(
                    f.place(),
                    f.material(),
                    f.thicknessMm(),
                    f.colour(),
                    f.condition().word(),
                    f.originality().word(),
                    f.assemblyNumber(),
                    null,
                    null);
        }
        for (GroupFinding g : job.findings().groups()) {
            String place = "all " + g.placeKind() + " of " + g.group();
            String also = String.join("; ", g.also());
            table.row(place, g.mostly(), g.thicknessMm(), null, g.state().word(), null, null, also, g.missing());
        }
        return table;
    }

    private static Table decisions(Job job) {
        Table table = Table.of("about", "settled", "why");
        job.decisions().forEach((about, decision) -> table.row(about, decision.inWords(), decision.why()));
        return table;
    }

    private static Table work(Job job) {
        Table table = Table.of("what", "of", "when");
        for (WorkDone done : job.work()) {
            table.row(done.kind().word(), done.of(), done.when());
        }
        return table;
    }

    private static Table playTests(Job job) {
        Table table = Table.of(
                "test",
                "when",
                "stage",
                "by",
                "mouthpiece",
                "reed",
                "insertion_mm",
                "temperature_degC",
                "a4_Hz",
                "fingering",
                "cents",
                "spread_cents",
                "answers");
        for (PlayTest test : job.playTests()) {
            test.notes().forEach(note -> row(table, test, note.fingering(), note.cents(), note.spreadCents(), null));
            test.answers().forEach((fingering, says) -> row(table, test, fingering, null, null, says.word()));
        }
        return table;
    }

    private static void row(
            Table table,
            PlayTest test,
            String fingering,
            @Nullable Double cents,
            @Nullable Double spread,
            @Nullable String answers) {
        PlayTest.Conditions under = test.conditions();
        table.row(
                test.id(),
                test.when(),
                test.stage().word(),
                test.heardBy().word(),
                under.mouthpiece(),
                under.reed(),
                under.insertionMm(),
                under.temperatureDegC(),
                under.referenceHz(),
                fingering,
                cents,
                spread,
                answers);
    }

    private static Table notes(Job job) {
        Table table = Table.of("about", "note");
        job.notes().forEach(table::row);
        job.photos().values().forEach(tick -> table.row("photograph " + tick.shot(), "taken"));
        job.keeping()
                .parts()
                .values()
                .forEach(part -> table.row("original of " + part.place(), part.what() + ", kept in " + part.store()));
        return table;
    }

    private static Table history(List<ShowHistory.Line> history) {
        Table table = Table.of("edit", "at", "by", "what", "undone");
        for (ShowHistory.Line line : history.reversed()) {
            table.row(line.seq(), line.at(), line.who(), line.words(), line.undone() ? "undone" : "");
        }
        return table;
    }
}
