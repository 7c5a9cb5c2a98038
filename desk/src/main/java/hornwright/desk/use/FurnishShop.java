package hornwright.desk.use;

import hornwright.bench.job.CurrencyChosen;
import hornwright.bench.job.RoundingChosen;
import hornwright.bench.job.ShopNamed;
import hornwright.bench.job.StreamName;
import hornwright.bench.rules.Rounding;
import hornwright.desk.json.BadInput;

/** Settles the name of the shop, how it rounds, and what it quotes in. */
public record FurnishShop(Shop shop) {
    public Saved name(Form form, String name) {
        return shop.save(StreamName.RULES, form, new ShopNamed(name.strip()));
    }

    public Saved round(Form form, Rounding rounding) {
        return shop.save(StreamName.RULES, form, new RoundingChosen(rounding));
    }

    /** @param currency three capital letters of ISO 4217 */
    public Saved quoteIn(Form form, String currency) {
        if (!currency.matches("[A-Z]{3}")) {
            throw new BadInput("/currency", "\"" + currency + "\" is not three capital letters", "\"EUR\"");
        }
        return shop.save(StreamName.RULES, form, new CurrencyChosen(currency));
    }
}
