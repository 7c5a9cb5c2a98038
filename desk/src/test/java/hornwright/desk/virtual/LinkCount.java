package hornwright.desk.virtual;

/** What regulating came to over many horns. */
final class LinkCount {
    private int horns;
    private int before;
    private int afterOne;
    private int shut;
    private int rounds;
    private int contacts;

    void add(Regulating.Regulated done) {
        horns++;
        before += done.shutBefore() ? 1 : 0;
        afterOne += done.shutAfterOne() ? 1 : 0;
        shut += done.shut() ? 1 : 0;
        rounds += done.rounds();
        contacts += done.contacts();
    }

    double afterOne() {
        return afterOne / (double) horns;
    }

    double contactsAHorn() {
        return contacts / (double) horns;
    }

    void print(String title) {
        System.out.printf(
                "%-26s links: shut at first %.3f, after one round %.3f, in the end %.3f, rounds %.2f, contacts worked %.1f"
                        + " (%d horns)%n",
                title,
                before / (double) horns,
                afterOne(),
                shut / (double) horns,
                rounds / (double) horns,
                contactsAHorn(),
                horns);
    }
}
