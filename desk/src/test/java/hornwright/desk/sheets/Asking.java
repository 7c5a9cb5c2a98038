package hornwright.desk.sheets;

import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.sheet.SheetAsked;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.ArrayList;
import java.util.List;

/** Readings as a bench would type them, gathered into the question of a sheet. */
final class Asking {
    static final Keywork ALTO = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();

    private final Keywork keywork;
    private final List<Reading> readings = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private AgreedUse use = AgreedUse.WORKING;

    private Asking(Keywork keywork) {
        this.keywork = keywork;
    }

    static Asking alto() {
        return new Asking(ALTO);
    }

    static Asking of(String keywork) {
        return new Asking(KeyworkFile.shipped(keywork).orElseThrow());
    }

    Asking mm(ReadingKind kind, String of, String point, double value) {
        return says(kind, of, point, Observed.Amount.mm(value));
    }

    Asking word(ReadingKind kind, String of, String point, String word) {
        return says(kind, of, point, new Observed.Says(word));
    }

    Asking says(ReadingKind kind, String of, String point, Observed observed) {
        readings.add(new Reading(
                "r." + readings.size(),
                kind,
                of,
                point,
                observed,
                kind.usualInstrument(),
                "",
                "",
                null,
                Stage.ARRIVAL,
                null));
        return this;
    }

    Asking found(Finding finding) {
        findings.add(finding);
        return this;
    }

    Asking forUse(AgreedUse other) {
        use = other;
        return this;
    }

    PlanInputs inputs() {
        return PlanInputs.of(keywork)
                .withReadings(readings)
                .withFindings(findings)
                .withDecisions(List.of(new Decision.Use(use, "agreed")));
    }

    SheetAsked asked() {
        return SheetAsked.of(inputs());
    }
}
