package hornwright.desk.web.shop;

import hornwright.bench.job.Archives;
import hornwright.bench.stock.StockItem;
import hornwright.bench.stock.StockKind;
import hornwright.desk.units.LengthUnit;
import hornwright.desk.units.Lengths;
import hornwright.desk.units.Typed;
import hornwright.desk.use.PutStock;
import hornwright.desk.use.Saved;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Choices;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.Written;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The shelf of goods: what lies there, counted again or added. */
public final class StockPages {
    private final Desk desk;

    public StockPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/stock", context -> show(context, StockPage.Entry.EMPTY, ""));
        routes.post("/stock", this::add);
        routes.post("/stock/count", this::count);
    }

    private void show(Context context, StockPage.Entry entry, String said) {
        List<StockItem> items = desk.shop().stock().state().items();
        desk.answer(
                context,
                "stock",
                new StockPage(
                        desk.frame(context, "Stock"),
                        Stream.of(StockKind.values())
                                .map(kind ->
                                        kind(kind, items, desk.shop().archive().state()))
                                .filter(kind -> !kind.materials().isEmpty())
                                .toList(),
                        Stream.of(StockKind.values())
                                .map(kind -> new PlacePanel.Option(
                                        kind.name(), kind.word(), kind.name().equals(entry.kind())))
                                .toList(),
                        entry,
                        said,
                        desk.shop().stock().seq(),
                        Desk.fresh()));
    }

    private static StockPage.Kind kind(StockKind kind, List<StockItem> items, Archives archives) {
        Map<String, List<StockPage.Line>> materials = new LinkedHashMap<>();
        for (StockItem item : items) {
            if (item.kind() == kind) {
                materials
                        .computeIfAbsent(item.material(), none -> new ArrayList<>())
                        .add(line(item, archives));
            }
        }
        return new StockPage.Kind(
                OnBench.capital(kind.word()),
                materials.entrySet().stream()
                        .map(made -> new StockPage.Made(made.getKey(), made.getValue()))
                        .toList());
    }

    private static StockPage.Line line(StockItem item, Archives archives) {
        return new StockPage.Line(
                item.id(),
                size(item.diameterMm()),
                size(item.thicknessMm()),
                "" + item.count(),
                StockFits.of(item, archives),
                Desk.fresh());
    }

    private static String size(@Nullable Double millimetres) {
        return millimetres == null ? "" : Written.plain(millimetres) + " mm";
    }

    private void count(Context context) {
        String id = Desk.field(context, "item");
        String typed = Desk.field(context, "count");
        StockItem item = desk.shop().stock().state().items().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow(() -> Refusal.notFound("There is no \"%s\" on the shelf.".formatted(id)));
        if (!typed.matches("\\d{1,6}")) {
            throw new Refusal(422, "A count is a whole number like 12; this reads \"%s\".".formatted(typed));
        }
        Saved.Kept kept = Desk.kept(new PutStock(desk.shop())
                .put(
                        Desk.form(context),
                        new StockItem(
                                item.id(),
                                item.kind(),
                                item.material(),
                                item.diameterMm(),
                                item.thicknessMm(),
                                Integer.parseInt(typed),
                                item.price())));
        Back.to(context, "/stock?saved=" + Clocks.time(kept.at()) + "#" + id);
    }

    private void add(Context context) {
        List<String> faults = new ArrayList<>();
        String kind = Desk.field(context, "kind");
        String material = Desk.field(context, "material");
        if (Stream.of(StockKind.values()).noneMatch(one -> one.name().equals(kind))) {
            faults.add("Choose the kind of goods.");
        }
        if (material.isEmpty() || material.length() > 80) {
            faults.add("Say what it is made of, like: kid leather over woven wool felt.");
        }
        @Nullable Double diameter = size(context, "diameter", faults);
        @Nullable Double thickness = size(context, "thickness", faults);
        String count = Desk.field(context, "count");
        if (!count.matches("\\d{1,6}")) {
            faults.add("The count is a whole number like 12.");
        }
        @Nullable BigDecimal price = price(Desk.field(context, "price"), faults);
        if (!faults.isEmpty()) {
            context.status(422);
            show(context, entry(context, faults), "");
            return;
        }
        StockKind chosen = Choices.of(StockKind.class, kind, StockKind.PAD);
        StockItem item = new StockItem(
                id(chosen, material, diameter, thickness),
                chosen,
                material,
                diameter,
                thickness,
                Integer.parseInt(count),
                price);
        Desk.kept(new PutStock(desk.shop()).put(Desk.form(context), item));
        Back.to(context, "/stock#" + item.id());
    }

    private static @Nullable Double size(Context context, String name, List<String> faults) {
        String typed = Desk.field(context, name);
        if (typed.isEmpty()) {
            return null;
        }
        return switch (Lengths.read(typed, LengthUnit.MILLIMETRE)) {
            case Typed.Unclear unclear -> {
                faults.add(OnBench.capital(name) + ": " + unclear.sentence());
                yield null;
            }
            case Typed.Amount amount
            when amount.value().signum() <= 0 -> {
                faults.add("A " + name + " is more than 0, like 4.5.");
                yield null;
            }
            case Typed.Amount amount -> amount.value().doubleValue();
        };
    }

    private static @Nullable BigDecimal price(String typed, List<String> faults) {
        if (typed.isEmpty()) {
            return null;
        }
        if (!typed.matches("\\d{1,6}([.,]\\d{1,2})?")) {
            faults.add("A price is like 2.40 or 2,40.");
            return null;
        }
        return new BigDecimal(typed.replace(',', '.'));
    }

    private static StockPage.Entry entry(Context context, List<String> faults) {
        return new StockPage.Entry(
                Desk.field(context, "kind"),
                Desk.field(context, "material"),
                Desk.field(context, "diameter"),
                Desk.field(context, "thickness"),
                Desk.field(context, "count"),
                Desk.field(context, "price"),
                faults);
    }

    /** The same goods get the same id, so that adding them again counts them again. */
    private static String id(StockKind kind, String material, @Nullable Double diameter, @Nullable Double thickness) {
        String text = kind.word() + " " + material + (diameter == null ? "" : " " + Written.exact(diameter))
                + (thickness == null ? "" : " x " + Written.exact(thickness));
        return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9.]+", "-");
    }
}
