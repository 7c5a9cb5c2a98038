package hornwright.desk.web.photo;

import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Place;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Photo;
import hornwright.bench.survey.Reading;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PhotoForm.Section;
import hornwright.desk.web.view.PlacePanel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Writes what is pointed at on one photograph, and what can be. */
public final class PhotoMarks {
    private static final int ACROSS = 8;
    private static final int DOWN = 6;
    private static final double RING = 1 / 28.0;

    private final OnBench bench;
    private final Photo photo;

    public PhotoMarks(OnBench bench, Photo photo) {
        this.bench = bench;
        this.photo = photo;
    }

    public List<PhotoPage.Pointed> marks() {
        List<PhotoPage.Pointed> marks = new ArrayList<>();
        double ring = Math.max(photo.width(), photo.height()) * RING;
        for (Photo.Mark mark : photo.marks()) {
            marks.add(new PhotoPage.Pointed(
                    marks.size() + 1,
                    mark.place(),
                    bench.pictured(mark.place()),
                    bench.picturedAddress(mark.place()),
                    Math.round(mark.x() * photo.width()),
                    Math.round(mark.y() * photo.height()),
                    Math.round(ring)));
        }
        return marks;
    }

    /** The picture as 8 by 6 touch points, each 44 pixels wide on a small telephone. */
    public static List<PhotoPage.Cell> cells() {
        List<PhotoPage.Cell> cells = new ArrayList<>();
        for (int row = 0; row < DOWN; row++) {
            for (int column = 0; column < ACROSS; column++) {
                cells.add(new PhotoPage.Cell(
                        "%s,%s".formatted((column + 0.5) / ACROSS, Math.round((row + 0.5) / DOWN * 1000) / 1000.0),
                        "Row %d, column %d".formatted(row + 1, column + 1)));
            }
        }
        return cells;
    }

    /** Pins first, then all places by group of keys; what the photograph was taken of is chosen. */
    public List<Section> choices() {
        Map<String, List<PlacePanel.Option>> byGroup = new LinkedHashMap<>();
        for (Reading reading : bench.job().readings().current()) {
            if (reading.observed() instanceof Observed.Pin) {
                byGroup.computeIfAbsent("Body", none -> new ArrayList<>()).add(option(reading.of()));
            }
        }
        for (Place place : bench.keywork().places()) {
            String title = bench.keywork().groupOf(place).map(KeyGroup::title).orElse("Tube and neck");
            byGroup.computeIfAbsent(title, none -> new ArrayList<>()).add(option(place.id()));
        }
        return byGroup.entrySet().stream()
                .map(entry -> new Section(entry.getKey(), entry.getValue()))
                .toList();
    }

    private PlacePanel.Option option(String subject) {
        return new PlacePanel.Option(subject, bench.pictured(subject), Objects.equals(subject, photo.place()));
    }
}
