package hornwright.desk.web.horn;

import hornwright.bench.horn.Place;
import hornwright.desk.drawing.Stuff;
import hornwright.desk.web.horn.HornPage.Sample;
import hornwright.desk.web.view.OnBench;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What patterns and icons on the drawing mean, as far as they occur on this layer. */
final class Legend {
    private Legend() {}

    static List<Sample> of(OnBench bench, Layer layer, Showings showings) {
        if (layer.ofNumbers()) {
            return steps(showings.numbers(layer).steps());
        }
        Set<Stuff> stuffs = EnumSet.noneOf(Stuff.class);
        Map<String, String> states = new LinkedHashMap<>();
        for (Place place : bench.keywork().places()) {
            Showings.Shown shown = showings.of(layer, place);
            if (!shown.material().isEmpty()) {
                stuffs.add(Stuff.of(shown.material()));
            }
            String icon = shown.state().icon();
            if (!icon.equals("found") && !icon.equals("as-built")) {
                states.putIfAbsent(icon, meaning(layer, icon));
            }
        }
        List<Sample> samples = new ArrayList<>();
        stuffs.stream()
                .filter(Stuff::patterned)
                .forEach(stuff -> samples.add(new Sample("stuff", stuff.word(), stuff.word())));
        states.forEach((icon, word) -> samples.add(new Sample("state", icon, word)));
        return samples;
    }

    private static List<Sample> steps(List<String> steps) {
        List<Sample> samples = new ArrayList<>();
        for (int step = 1; step <= steps.size(); step++) {
            samples.add(new Sample("depth", String.valueOf(step), steps.get(step - 1)));
        }
        samples.add(new Sample("depth", "0", steps.isEmpty() ? "no number yet" : "no number"));
        return samples;
    }

    private static String meaning(Layer layer, String icon) {
        return switch (layer) {
            case LEAK ->
                switch (icon) {
                    case "done" -> "tried, seals";
                    case "stale" -> "leaks";
                    default -> "not tried";
                };
            case ORIGIN ->
                switch (icon) {
                    case "done" -> "original";
                    case "planned" -> "later repair";
                    case "contested" -> "missing";
                    default -> "not known yet";
                };
            default ->
                switch (icon) {
                    case "planned" -> "something is planned";
                    case "done" -> "stays, or done";
                    case "stale" -> "recheck";
                    case "contested" -> "to be decided";
                    default -> "not known yet";
                };
        };
    }
}
