package hornwright.desk.web.shop;

import hornwright.bench.job.History;
import hornwright.bench.job.House;
import hornwright.bench.job.MaterialTested;
import hornwright.bench.job.Posted;
import hornwright.bench.material.Fit;
import hornwright.bench.material.Materials;
import hornwright.bench.material.Property;
import hornwright.bench.rules.Rule;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.Written;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes the table of materials and the tests behind it. */
public final class MaterialRows {
    /**
     * What was refused.
     *
     * @param rule whose new value was refused; empty when it was a test
     * @param typed what was typed, by field
     */
    public record Refused(String rule, Map<String, String> typed, List<String> faults) {
        public static final Refused NOTHING = new Refused("", Map.of(), List.of());
    }

    private final History<House> house;
    private final Materials materials;
    private final Refused refused;

    public MaterialRows(History<House> house, Refused refused) {
        this.house = house;
        this.materials = house.state().materials();
        this.refused = refused;
    }

    public MaterialsPage page(Frame frame) {
        return new MaterialsPage(
                frame,
                Property.ofSheets().stream().map(MaterialRows::head).toList(),
                materials.listed().stream().map(this::row).toList(),
                Property.ofPads().stream().map(MaterialRows::head).toList(),
                materials.padClasses().stream().map(this::pad).toList(),
                tests(),
                refused.rule().isEmpty() ? refused.typed() : Map.of(),
                refused.rule().isEmpty() ? refused.faults() : List.of(),
                options("material", materials.listed()),
                options("class", materials.padClasses()),
                UUID.randomUUID().toString(),
                house.seq());
    }

    private static String head(Property property) {
        String label = OnBench.capital(property.label());
        return property.unit().isEmpty() ? label : label + ", " + property.unit();
    }

    private MaterialsPage.Row row(String material) {
        return new MaterialsPage.Row(
                OnBench.capital(material),
                Property.ofSheets().stream()
                        .map(property -> cell(material + ", " + property.label(), material, property))
                        .toList());
    }

    private MaterialsPage.Row pad(String padClass) {
        return new MaterialsPage.Row(
                OnBench.capital(padClass) + " pad",
                Property.ofPads().stream()
                        .map(property -> cell(padClass + " pad, " + property.label(), padClass, property))
                        .toList());
    }

    private MaterialsPage.Cell cell(String what, String material, Property property) {
        Rule rule = materials.rule(material, property);
        boolean faulty = rule.id().equals(refused.rule());
        return new MaterialsPage.Cell(
                rule.id(),
                what,
                faulty ? refused.typed().getOrDefault("value", "") : written(rule),
                Written.uncertainty(rule.u()),
                rule.unit(),
                source(rule),
                rule.isMeasured() ? "measured here" : rule.asShipped() ? "typical, check yours" : "set here",
                rule.isMeasured() ? "done" : rule.asShipped() ? "missing" : "planned",
                !house.state().rules().get(rule.id()).asShipped(),
                faulty ? String.join(" ", refused.faults()) : "");
    }

    private static String written(Rule rule) {
        return rule.isMeasured() ? Written.value(rule.value(), rule.u()) : Written.exact(rule.value());
    }

    /** A citation or a remark stands after the first semicolon of what the rule says. */
    private static String source(Rule rule) {
        int at = rule.says().indexOf("; ");
        String told = at < 0 ? "" : rule.says().substring(at + 2);
        if (rule.isMeasured()) {
            return told;
        }
        return rule.asShipped() ? rule.mark().word() + (told.isEmpty() ? "" : ": " + told) : told;
    }

    private List<MaterialsPage.Done> tests() {
        return house.edits().reversed().stream()
                .filter(posted -> posted.edit() instanceof MaterialTested && !house.isUndone(posted.seq()))
                .flatMap(posted -> done(posted, (MaterialTested) posted.edit()))
                .toList();
    }

    private Stream<MaterialsPage.Done> done(Posted posted, MaterialTested tested) {
        return Stream.of(new MaterialsPage.Done(
                OnBench.capital(tested.test().inWords()),
                tested.test()
                        .fits(Materials.of(house.state().rules()))
                        .had()
                        .map(fits -> fits.stream().map(MaterialRows::gave).collect(Collectors.joining("; ")))
                        .orElse("nothing"),
                Clocks.day(posted.at()),
                posted.seq(),
                UUID.randomUUID().toString()));
    }

    private static String gave(Fit fit) {
        return "%s %s ± %s %s"
                .formatted(
                        fit.property().label(),
                        Written.value(fit.value(), fit.u()),
                        Written.uncertainty(fit.u()),
                        fit.property().unit())
                .strip();
    }

    private List<PlacePanel.Option> options(String field, List<String> words) {
        return words.stream()
                .map(word -> new PlacePanel.Option(
                        word, word, word.equals(refused.typed().getOrDefault(field, ""))))
                .toList();
    }
}
