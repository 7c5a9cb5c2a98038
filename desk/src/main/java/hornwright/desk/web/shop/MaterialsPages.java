package hornwright.desk.web.shop;

import hornwright.bench.job.StreamName;
import hornwright.bench.material.BenchTest;
import hornwright.bench.material.PackingTest;
import hornwright.bench.material.PadLoadsTest;
import hornwright.bench.material.PadTest;
import hornwright.bench.material.WeightTest;
import hornwright.bench.rules.Rule;
import hornwright.bench.rules.ShopRules;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Fault;
import hornwright.desk.units.Typed;
import hornwright.desk.use.SetRule;
import hornwright.desk.use.TestMaterial;
import hornwright.desk.use.Undo;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.page.Units;
import hornwright.desk.web.shop.MaterialRows.Refused;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.Written;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The table of materials: figures to be set, and tests at the bench that outrank them. */
public final class MaterialsPages {
    private static final List<String> FIELDS = List.of(
            "test",
            "material",
            "class",
            "across",
            "ring",
            "weight",
            "free",
            "loaded",
            "weight2",
            "loaded2",
            "weight3",
            "loaded3",
            "fresh",
            "packed");

    private final Desk desk;

    public MaterialsPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/materials", context -> show(context, Refused.NOTHING));
        routes.post("/materials", this::set);
        routes.post("/materials/test", this::test);
        routes.post("/materials/undo", this::undo);
    }

    private void show(Context context, Refused refused) {
        MaterialRows rows = new MaterialRows(desk.shop().house(), refused);
        desk.answer(context, "materials", rows.page(desk.frame(context, "Materials")));
    }

    private void set(Context context) {
        String id = Desk.field(context, "rule");
        Rule rule = rules().find(id).orElseThrow(() -> Refusal.notFound("There is no figure \"%s\".".formatted(id)));
        if (!Desk.field(context, "back-to-shipped").isEmpty()) {
            Desk.kept(new SetRule(desk.shop()).asShipped(Desk.form(context), id));
        } else {
            String typed = Desk.field(context, "value");
            Double value = number(typed);
            if (value == null || value < rule.least() || value > rule.most()) {
                context.status(422);
                String range = "A number from %s to %s, like %s."
                        .formatted(
                                Written.exact(rule.least()), Written.exact(rule.most()), Written.exact(rule.value()));
                show(context, new Refused(id, Map.of("value", typed), List.of(range)));
                return;
            }
            Desk.kept(new SetRule(desk.shop()).set(Desk.form(context), id, value));
        }
        Back.to(context, "/materials#" + id);
    }

    private void test(Context context) {
        List<String> faults = new ArrayList<>();
        try {
            BenchTest test = read(context, faults);
            if (faults.isEmpty()) {
                Desk.kept(new TestMaterial(desk.shop()).keep(Desk.form(context), test));
                Back.to(context, "/materials#tests");
                return;
            }
        } catch (BadInput unclear) {
            unclear.faults().stream().map(Fault::what).forEach(faults::add);
        }
        Map<String, String> typed = new LinkedHashMap<>();
        FIELDS.forEach(name -> typed.put(name, Desk.field(context, name)));
        context.status(422);
        show(context, new Refused("", typed, faults));
    }

    /** The test as typed; with faults its numbers mean nothing. */
    private BenchTest read(Context context, List<String> faults) {
        double sure = rules().value("u.thickness-gauge_mm");
        return switch (Desk.field(context, "test")) {
            case "weight" -> {
                double across = length(context, "across", "diameter of the disc", faults);
                double area = Math.PI / 4 * across * across;
                double areaU = Math.PI / 2 * across * rules().value("u.caliper_mm");
                yield new WeightTest(
                        word(context, "material", faults),
                        area,
                        areaU,
                        weight(context, "weight", faults),
                        length(context, "free", "thickness without the weight", faults),
                        length(context, "loaded", "thickness under the weight", faults),
                        sure);
            }
            case "packed" ->
                new PackingTest(
                        word(context, "material", faults),
                        length(context, "fresh", "thickness fresh", faults),
                        length(context, "packed", "thickness after some weeks", faults),
                        sure);
            case "pad" -> pad(context, sure, faults);
            default -> throw new Refusal(422, "Say which test it was.");
        };
    }

    /** One weight tells the skin, two or three the felt as well. */
    private BenchTest pad(Context context, double sure, List<String> faults) {
        String padClass = word(context, "class", faults);
        double ring = length(context, "ring", "diameter of the ring", faults);
        double free = length(context, "free", "height without a weight", faults);
        List<PadLoadsTest.Load> loads = new ArrayList<>();
        for (String nth : List.of("", "2", "3")) {
            boolean typed = !Desk.field(context, "weight" + nth).isEmpty()
                    || !Desk.field(context, "loaded" + nth).isEmpty();
            if (typed || nth.isEmpty()) {
                loads.add(new PadLoadsTest.Load(
                        weight(context, "weight" + nth, faults),
                        length(context, "loaded" + nth, "height under the weight", faults)));
            }
        }
        PadLoadsTest.Load first = loads.getFirst();
        return loads.size() == 1
                ? new PadTest(padClass, ring, first.massG(), free, first.heightMm(), sure)
                : new PadLoadsTest(padClass, ring, free, loads, sure);
    }

    private String word(Context context, String name, List<String> faults) {
        String word = Desk.field(context, name);
        var materials = desk.shop().house().state().materials();
        if (!materials.listed().contains(word) && !materials.padClasses().contains(word)) {
            faults.add("Choose what it was done with.");
        }
        return word;
    }

    private static double length(Context context, String name, String what, List<String> faults) {
        Typed typed = Units.length(context, Desk.field(context, name));
        if (typed instanceof Typed.Amount amount && amount.value().signum() > 0) {
            return amount.value().doubleValue();
        }
        faults.add(OnBench.capital(what) + ": "
                + (typed instanceof Typed.Unclear unclear ? unclear.sentence() : "it is above zero, like 3.02."));
        return 1;
    }

    private static double weight(Context context, String name, List<String> faults) {
        Double grams = number(Desk.field(context, name).replaceFirst("\\s*g$", ""));
        if (grams == null || !(grams > 0)) {
            faults.add("Weight: grams above zero, like 200.");
            return 1;
        }
        return grams;
    }

    private static @org.jspecify.annotations.Nullable Double number(String typed) {
        String plain = typed.replace(',', '.').replace('−', '-');
        return plain.matches("-?(\\d{1,7}(\\.\\d{0,6})?|\\.\\d{1,6})") ? Double.valueOf(plain) : null;
    }

    private void undo(Context context) {
        String edit = Desk.field(context, "edit");
        if (!edit.matches("\\d{1,9}")) {
            throw new Refusal(422, "Say which test is taken back.");
        }
        Desk.kept(new Undo(desk.shop()).undo(StreamName.RULES, Desk.form(context), Long.parseLong(edit)));
        Back.to(context, "/materials#tests");
    }

    private ShopRules rules() {
        return desk.shop().house().state().rules();
    }
}
