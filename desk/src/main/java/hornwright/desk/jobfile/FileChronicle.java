package hornwright.desk.jobfile;

import hornwright.bench.survey.Chronicle;
import hornwright.bench.survey.Happening;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.WorkDone;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The course of a job that comes as a file, by the times written in it. What is undated, and what was read before the
 * stage the file has reached, is older than that stage; dated decisions and work came after it. Undated work comes last.
 */
final class FileChronicle {
    private record Dated(Instant when, Happening happening) {}

    private final List<Dated> all = new ArrayList<>();

    private FileChronicle() {}

    static Chronicle of(Stage stage, List<DecisionJson.Dated> decisions, List<Reading> readings, List<WorkDone> work) {
        FileChronicle file = new FileChronicle();
        readings.stream()
                .filter(Chronicle::keeps)
                .forEach(reading -> file.add(
                        reading.stage().compareTo(stage) < 0 ? null : reading.when(),
                        Instant.MIN,
                        new Happening.Measured(reading)));
        decisions.forEach(each -> file.add(each.when(), Instant.MIN, new Happening.Settled(each.decision())));
        if (stage != Stage.ARRIVAL) {
            file.add(null, Instant.MIN, new Happening.Reached(stage));
        }
        work.forEach(done -> file.add(done.when(), Instant.MAX, new Happening.Worked(done)));
        return new Chronicle(file.all.stream()
                .sorted(Comparator.comparing(Dated::when))
                .map(Dated::happening)
                .toList());
    }

    private void add(@Nullable Instant when, Instant undated, Happening happening) {
        all.add(new Dated(when == null ? undated : when, happening));
    }
}
