package hornwright.bench.material;

import hornwright.bench.rules.Rule;
import hornwright.bench.rules.ShopRules;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The table of materials of one shop: its rules, outranked by what its own tests gave. Tests of the same figure are
 * taken together.
 */
public final class Materials {
    private static final String UNKNOWN = "unknown";
    private static final String PREFIX = "material.";
    private static final String SUFFIX = "." + Property.MODULUS.word();

    private final ShopRules rules;
    private final Map<String, Fit> fits;
    private final Map<String, Cell> instead;

    private Materials(ShopRules rules, Map<String, Fit> fits, Map<String, Cell> instead) {
        this.rules = rules;
        this.fits = fits;
        this.instead = instead;
    }

    public static Materials of(ShopRules rules) {
        return new Materials(rules, Map.of(), Map.of());
    }

    /** The same with one figure supposed to be another, to see what hangs on it. */
    public Materials instead(Cell supposed) {
        Map<String, Cell> more = new LinkedHashMap<>(instead);
        more.put(supposed.property().rule(supposed.material()), supposed);
        return new Materials(rules, fits, more);
    }

    /** The same with one more test. */
    public Materials with(Fit fit) {
        Map<String, Fit> more = new LinkedHashMap<>(fits);
        more.merge(fit.property().rule(fit.material()), fit, Fit::and);
        return new Materials(rules, more, instead);
    }

    /** The rules with every test laid over them, so that whatever works by rules works by what was measured. */
    public ShopRules measuredRules() {
        ShopRules measured = rules;
        for (Map.Entry<String, Fit> fit : fits.entrySet()) {
            if (rules.find(fit.getKey()).isPresent()) {
                measured = measured.measured(
                        fit.getKey(),
                        fit.getValue().value(),
                        fit.getValue().u(),
                        fit.getValue().how());
            }
        }
        return measured;
    }

    /** The same with every test of a shop that tells something. */
    public Materials withAll(Collection<BenchTest> tests) {
        Materials all = this;
        for (BenchTest test : tests) {
            for (Fit fit : test.fits(this).had().orElse(List.of())) {
                all = all.with(fit);
            }
        }
        return all;
    }

    public ShopRules rules() {
        return rules;
    }

    /** One figure; that of an unknown material where nobody has listed this one. */
    public Cell cell(String material, Property property) {
        Cell supposed = instead.get(property.rule(material));
        if (supposed != null) {
            return supposed;
        }
        Fit fit = fits.get(property.rule(material));
        if (fit != null) {
            return new Cell(material, property, fit.value(), fit.u(), Standing.MEASURED, fit.how());
        }
        Rule rule = rule(material, property);
        return new Cell(
                material, property, rule.value(), rule.u(), standing(rule), rule.says() + " (" + rule.label() + ")");
    }

    /** The rule that holds a figure; that of an unknown material where nobody has listed this one. */
    public Rule rule(String material, Property property) {
        return rules.find(property.rule(material)).orElseGet(() -> rules.get(property.rule(UNKNOWN)));
    }

    private static Standing standing(Rule rule) {
        if (rule.isMeasured()) {
            return Standing.MEASURED;
        }
        return rule.asShipped() ? Standing.TYPICAL : Standing.SET;
    }

    public double value(String material, Property property) {
        return cell(material, property).value();
    }

    /** The materials with a row of their own, by their slugs made words again. */
    public List<String> listed() {
        return rules.all().stream()
                .map(Rule::id)
                .filter(id -> id.startsWith(PREFIX) && id.endsWith(SUFFIX))
                .map(id -> id.substring(PREFIX.length(), id.length() - SUFFIX.length()))
                .map(Materials::words)
                .toList();
    }

    /** The classes of pads, by softness. */
    public List<String> padClasses() {
        return rules.all().stream()
                .map(Rule::id)
                .filter(id -> id.startsWith("pad-class.") && id.endsWith("." + Property.SEAT.word()))
                .map(id -> id.substring(
                        "pad-class.".length(),
                        id.length() - Property.SEAT.word().length() - 1))
                .toList();
    }

    /** All rows and columns. */
    public List<Cell> table() {
        List<Cell> all = new ArrayList<>();
        for (String material : listed()) {
            for (Property property : Property.ofSheets()) {
                all.add(cell(material, property));
            }
        }
        return all;
    }

    private static String words(String slug) {
        return slug.startsWith("cork-rubber")
                ? "cork-rubber" + slug.substring(11).replace('-', ' ')
                : slug.replace('-', ' ');
    }
}
