package hornwright.bench.job;

import hornwright.bench.survey.Photo;
import java.util.List;

/** Where on a photograph places are to be seen: all marks of that photograph, as they stand from now on. */
@Kind(word = "photo-marked")
public record PhotoMarked(String photo, List<Photo.Mark> marks) implements JobEdit {
    public PhotoMarked {
        marks = List.copyOf(marks);
    }

    @Override
    public Fields fields() {
        return Fields.of("picture." + photo);
    }

    @Override
    public String inWords() {
        return marks.isEmpty()
                ? "photograph without marks"
                : "photograph points at "
                        + String.join(
                                ", ", marks.stream().map(Photo.Mark::place).toList());
    }
}
