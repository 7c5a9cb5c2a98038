package hornwright.desk.web.plan;

import hornwright.bench.plan.regulation.SettledContact;
import hornwright.desk.web.view.OnBench;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Changes at contacts that were accepted, as work to be done. */
public final class SettledRows {
    private final OnBench bench;
    private final List<SettledContact> settled;
    private final LinkNames names;

    public SettledRows(OnBench bench, List<SettledContact> settled) {
        this.bench = bench;
        this.settled = settled;
        this.names = new LinkNames(bench.keywork());
    }

    /** @param fresh begins the key of each form */
    public List<LinksPage.Settled> rows(String fresh) {
        return settled.stream()
                .map(contact -> new LinksPage.Settled(
                        contact.link().id(),
                        OnBench.capital(names.contact(contact.link().id())),
                        contact.words(),
                        contact.decision().why(),
                        names.after(contact.link().id()),
                        Objects.requireNonNullElse(contact.stale(), ""),
                        bench.address("links"),
                        fresh + "-" + contact.link().id()))
                .toList();
    }

    /** What is settled where this step works, ": take 0.08 mm"; empty where nothing is. */
    public Optional<String> of(String link) {
        return settled.stream()
                .filter(contact -> contact.link().id().equals(link))
                .map(contact -> contact.words() + (contact.stale() == null ? "" : "; settle anew: " + contact.stale()))
                .findFirst();
    }
}
