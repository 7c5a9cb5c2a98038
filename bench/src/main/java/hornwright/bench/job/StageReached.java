package hornwright.bench.job;

import hornwright.bench.survey.Stage;

/** How far the work has come. */
@Kind(word = "stage-reached")
public record StageReached(Stage stage) implements JobEdit {
    @Override
    public Fields fields() {
        return Fields.of("stage");
    }

    @Override
    public String inWords() {
        return "stage: " + stage.word();
    }
}
