package hornwright.bench.job;

/** What the shop is called, as it stands on pages and sheets. */
@Kind(word = "shop-named")
public record ShopNamed(String name) implements RulesEdit {
    @Override
    public Fields fields() {
        return Fields.of("name");
    }

    @Override
    public String inWords() {
        return name.isEmpty() ? "shop without a name" : "shop named " + name;
    }
}
