package hornwright.desk.web.shop;

import hornwright.bench.rules.Rule;
import hornwright.bench.rules.ShopRules;
import hornwright.desk.use.Saved;
import hornwright.desk.use.SetRule;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.view.Written;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import org.jspecify.annotations.Nullable;

/** The rules of the shop: each with its range and what stands behind it, to be set or put back. */
public final class RulesPages {
    private final Desk desk;

    public RulesPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/rules", context -> show(context, null, "", ""));
        routes.post("/rules", this::set);
    }

    private void show(Context context, @Nullable String faulty, String typed, String fault) {
        ShopRules rules = desk.shop().house().state().rules();
        desk.answer(
                context,
                "rules",
                new RulesPage(
                        desk.frame(context, "Rules"),
                        RuleRows.of(rules, faulty, typed, fault),
                        desk.shop().house().seq()));
    }

    private void set(Context context) {
        String id = Desk.field(context, "rule");
        Rule rule = desk.shop()
                .house()
                .state()
                .rules()
                .find(id)
                .orElseThrow(() -> Refusal.notFound("There is no rule \"%s\".".formatted(id)));
        if (!Desk.field(context, "back-to-shipped").isEmpty()) {
            done(context, id, new SetRule(desk.shop()).asShipped(Desk.form(context), id));
            return;
        }
        String typed = Desk.field(context, "value");
        String plain = typed.replace(',', '.').replace('−', '-');
        if (!plain.matches("-?(\\d{1,7}(\\.\\d{0,6})?|\\.\\d{1,6})")) {
            refused(context, id, typed, "Write a number like %s.".formatted(Written.exact(rule.value())));
            return;
        }
        double value = Double.parseDouble(plain);
        if (value < rule.least() || value > rule.most()) {
            refused(
                    context,
                    id,
                    typed,
                    "It must lie between %s and %s %s; this reads %s."
                            .formatted(Written.exact(rule.least()), Written.exact(rule.most()), rule.unit(), typed));
            return;
        }
        done(context, id, new SetRule(desk.shop()).set(Desk.form(context), id, value));
    }

    private static void done(Context context, String id, Saved saved) {
        Desk.kept(saved);
        Back.to(context, "/rules#" + id);
    }

    private void refused(Context context, String id, String typed, String fault) {
        context.status(422);
        show(context, id, typed, fault);
    }
}
