package hornwright.desk.web.page;

import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.TradeName;
import hornwright.bench.steps.BenchSteps;
import hornwright.bench.steps.StepsAsked;
import hornwright.desk.web.view.OnBench;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;

/** Edits in the words of the trade: ids become names, notes get their signs. */
public final class Words {
    private static final Pattern ID = Pattern.compile("(?<=^|[ (])([a-z][a-z-]*(?:\\.[a-z-]+)*)(?=[:,.) ]|$)");

    private final Map<String, String> names = new HashMap<>();

    public Words(Keywork keywork) {
        BenchSteps.of(StepsAsked.of(keywork)).steps().forEach(step -> names.put(step.id(), "“" + step.words() + "”"));
        keywork.keys().forEach(key -> names.put(key.id(), key.name().display()));
        keywork.cups().forEach(cup -> names.put(cup.id(), keywork.nameOf(cup).display() + " cup"));
        keywork.places().forEach(place -> {
            names.put(place.id(), place.display());
            names.put("treat." + place.id(), place.display());
        });
        keywork.cups().forEach(cup -> {
            names.put(
                    "height." + cup.id(), "the height of " + keywork.nameOf(cup).display());
            names.put(
                    "pad-thickness." + cup.id(),
                    "the pad of " + keywork.nameOf(cup).display());
        });
        keywork.links().forEach(link -> names.put("contact." + link.id(), contact(keywork, link)));
    }

    public String of(String words) {
        String named = ID.matcher(words).replaceAll(match -> {
            String id = match.group(1);
            boolean told = id.contains(".") || id.contains("-") || isNamedAfter(words, match.start());
            return told ? names.getOrDefault(id, id) : id;
        });
        return OnBench.capital(TradeName.withSigns(named));
    }

    private static String contact(Keywork keywork, Link link) {
        return "the contact where %s %s %s"
                .formatted(
                        keywork.keys().get(link.driver()).name().display(),
                        link.kind().verb(),
                        keywork.keys().get(link.follower()).name().display());
    }

    /** A bare word such as "a", "f" or "solder" is a name only where an edit says of what it speaks. */
    private static boolean isNamedAfter(String words, int start) {
        String before = words.substring(0, start);
        return before.endsWith(" of ") || before.endsWith("signed off: ") || before.endsWith("found right: ");
    }
}
