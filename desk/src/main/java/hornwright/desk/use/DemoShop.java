package hornwright.desk.use;

/** The shop a person finds on the first run: invented, and full enough to try everything on. */
record DemoShop(Shop shop) {
    void fill() {
        new FurnishShop(shop).name(Form.once(0, OpenShop.PROGRAM), "Quayside Winds");
    }
}
