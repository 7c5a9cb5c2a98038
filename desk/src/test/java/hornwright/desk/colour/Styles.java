package hornwright.desk.colour;

import hornwright.desk.house.Checkout;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The style sheets of the pages as they stand in the source tree, in one theme. */
record Styles(String rules, Map<String, String> colours) {
    private static final String FOLDER = "desk/src/main/resources/hornwright/web/";
    private static final Pattern COLOUR = Pattern.compile("--([\\w-]+): (#[0-9a-f]{6})");
    private static final String DARK = ":root[data-theme=dark] {";
    private static final String SYSTEM_DARK = "@media (prefers-color-scheme: dark)";

    static Styles light() {
        return new Styles(rulesNow(), colours(tokens(":root {")));
    }

    static Styles dark() {
        Map<String, String> colours = colours(tokens(":root {"));
        colours.putAll(chosenDark());
        return new Styles(rulesNow(), colours);
    }

    /** What somebody gets who asks for dark, and who leaves it to a dark system. */
    static Map<String, String> chosenDark() {
        return colours(tokens(DARK));
    }

    static Map<String, String> systemDark() {
        return colours(tokens(SYSTEM_DARK));
    }

    String colour(String token) {
        String hex = colours.get(token);
        if (hex == null) {
            throw new IllegalArgumentException("no colour --" + token);
        }
        return hex;
    }

    /** The colour a rule fills or draws with. */
    String of(String selector) {
        Matcher rule = Pattern.compile(
                        "(?:^|[\\s}])" + Pattern.quote(selector) + " \\{ (?:fill|color): var\\(--([\\w-]+)\\)")
                .matcher(rules);
        if (!rule.find()) {
            throw new IllegalArgumentException("no rule " + selector);
        }
        return colour(rule.group(1));
    }

    private static String rulesNow() {
        return text("drawing.css") + text("archive.css");
    }

    private static String tokens(String from) {
        String all = text("tokens.css");
        int start = all.indexOf(from) + from.length();
        return all.substring(start, all.indexOf('}', start));
    }

    private static Map<String, String> colours(String block) {
        Map<String, String> found = new LinkedHashMap<>();
        COLOUR.matcher(block).results().forEach(one -> found.put(one.group(1), one.group(2)));
        return found;
    }

    private static String text(String file) {
        return Checkout.text(Checkout.root().resolve(FOLDER + file));
    }
}
