package hornwright.desk.web.archive;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Witness;
import hornwright.bench.horn.Cut;
import hornwright.bench.horn.Form;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.horn.Word;
import hornwright.desk.drawing.RulerWords;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.Palette;
import hornwright.desk.web.view.PlacePanel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes the strokes with which a witness is painted, and what was said of it. */
public final class WitnessRows {
    private static final String TUBE = "body";

    private final Keywork keywork;
    private final Map<String, Observation> seen = new LinkedHashMap<>();
    private final Typed typed;

    /** What stands in the fields: nothing on a page that is opened, what was sent on one that comes back. */
    public interface Typed {
        String of(String field);

        /** Whether a place of a stroke is ticked. */
        boolean ticked(String field, String place);
    }

    public WitnessRows(Keywork keywork, Archive archive, Witness witness, Typed typed) {
        this.keywork = keywork;
        this.typed = typed;
        archive.observations().stream()
                .filter(look -> look.witness().equals(witness.id()))
                .forEach(look -> seen.put(look.place(), look));
    }

    public Map<String, Observation> seen() {
        return seen;
    }

    /** Which places one stroke goes over, by its name. */
    public static Map<String, List<Place>> strokes(Keywork keywork) {
        Map<String, List<Place>> strokes = new LinkedHashMap<>();
        Stream.concat(Stream.of(KeyGroup.values()).map(KeyGroup::word), Stream.of(TUBE))
                .forEach(group -> {
                    Map<PlaceKind, List<Place>> kinds = new TreeMap<>();
                    keywork.places()
                            .where(place -> group.equals(
                                    keywork.groupOf(place).map(KeyGroup::word).orElse(TUBE)))
                            .forEach(place -> kinds.computeIfAbsent(place.kind(), none -> new ArrayList<>())
                                    .add(place));
                    kinds.forEach((kind, places) -> strokes.put(group + "." + kind.word(), places));
                });
        return strokes;
    }

    public List<WitnessPage.Group> groups() {
        Map<String, List<WitnessPage.Stroke>> groups = new LinkedHashMap<>();
        strokes(keywork)
                .forEach((name, places) -> groups.computeIfAbsent(
                                name.substring(0, name.indexOf('.')), none -> new ArrayList<>())
                        .add(stroke(name, places)));
        return groups.entrySet().stream()
                .map(group -> new WitnessPage.Group(
                        group.getKey(), title(group.getKey()), fact(group.getValue()), group.getValue()))
                .toList();
    }

    static String title(String word) {
        return Stream.of(KeyGroup.values())
                .filter(group -> group.word().equals(word))
                .findFirst()
                .map(KeyGroup::title)
                .orElse("Tube and neck");
    }

    private static String fact(List<WitnessPage.Stroke> strokes) {
        long told = strokes.stream().filter(stroke -> !stroke.seen().isEmpty()).count();
        return "%d of %d looked at".formatted(told, strokes.size());
    }

    private WitnessPage.Stroke stroke(String name, List<Place> places) {
        PlaceKind kind = places.getFirst().kind();
        String material = typed.of("m." + name);
        List<PlacePanel.Option> materials = new ArrayList<>();
        materials.add(new PlacePanel.Option("", "not looked at", material.isEmpty()));
        Palette.of(kind).forEach(word -> materials.add(new PlacePanel.Option(word, word, word.equals(material))));
        return new WitnessPage.Stroke(
                name,
                OnBench.capital(kind.spoken()),
                places.size() == 1 ? places.getFirst().display() : places.size() + " places",
                told(places),
                materials,
                typed.of("o." + name),
                typed.of("c." + name),
                typed.of("t." + name),
                typed.of("a." + name),
                options(Form.values(), typed.of("s." + name)),
                options(Cut.values(), typed.of("k." + name)),
                places.stream()
                        .map(place -> new PlacePanel.Option(
                                place.id(), place.display(), typed.ticked("p." + name, place.id())))
                        .toList());
    }

    private static <E extends Enum<E> & Word> List<PlacePanel.Option> options(E[] words, String chosen) {
        List<PlacePanel.Option> options = new ArrayList<>();
        options.add(new PlacePanel.Option("", "not said", chosen.isEmpty()));
        for (E word : words) {
            options.add(new PlacePanel.Option(
                    word.name(), word.word().replace('-', ' '), word.name().equals(chosen)));
        }
        return options;
    }

    /** "natural cork, light brown at 4; woven wool felt at 1". */
    private String told(List<Place> places) {
        Map<String, Long> told = places.stream()
                .flatMap(place -> Optional.ofNullable(seen.get(place.id())).stream())
                .collect(Collectors.groupingBy(WitnessRows::words, LinkedHashMap::new, Collectors.counting()));
        return told.entrySet().stream()
                .sorted(Map.Entry.<String, Long>comparingByValue(Comparator.reverseOrder()))
                .map(one -> places.size() == 1 ? one.getKey() : one.getKey() + ": " + one.getValue())
                .collect(Collectors.joining("; "));
    }

    private static String words(Observation look) {
        return Stream.of(
                        look.material(),
                        look.colour() == null ? "" : look.colour(),
                        RulerWords.thickness(look.thicknessAtLeastMm()))
                .filter(word -> !word.isEmpty())
                .collect(Collectors.joining(", "));
    }
}
