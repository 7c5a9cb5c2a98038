package hornwright.desk.web.plan;

import hornwright.bench.horn.Cup;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.settled.SettledAnswer;
import hornwright.bench.plan.settled.SettledAnswer.ContactLine;
import hornwright.bench.plan.settled.SettledAnswer.GapLine;
import hornwright.bench.plan.settled.SettledAnswer.HeightLine;
import hornwright.bench.plan.settled.SettledAnswer.VentLine;
import hornwright.desk.units.Shown;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.State;

/** Writes where heights and gaps come to once new cork and felt have packed. */
public final class PackedRows {
    private final OnBench bench;
    private final LinkNames names;
    private final SettledAnswer settled;

    PackedRows(OnBench bench, LinkNames names, SettledAnswer settled) {
        this.bench = bench;
        this.names = names;
        this.settled = settled;
    }

    LinksPage.Packed rows() {
        int shut = settled.gaps().size() - settled.open().size();
        return new LinksPage.Packed(
                sum(),
                settled.contacts().stream().map(this::contact).toList(),
                settled.open().stream().map(this::gap).toList(),
                shut == 0 || shut == settled.gaps().size()
                        ? ""
                        : shut == 1
                                ? "The other one most likely stays shut."
                                : "The other %d most likely stay shut.".formatted(shut),
                settled.vents().stream().map(this::vent).toList(),
                settled.heights().stream().map(this::height).toList(),
                figure("days until the second look", settled.days()).withValue(whole(settled.days())),
                figure("packing over by then", settled.over()),
                bench.address("handover"));
    }

    String sum() {
        if (!settled.moves()) {
            return "Nothing new lies under a foot or in a contact of the linked cups, so nothing moves.";
        }
        String gaps = settled.widest()
                .map(widest -> "under %d of %d linked cups a gap most likely opens, the widest %s: %s mm."
                        .formatted(
                                settled.open().size(),
                                settled.gaps().size(),
                                spot(widest),
                                Shown.signed(widest.gap().value(), widest.gap().u())))
                .orElse("every linked cup most likely still shuts once the contacts have packed.");
        return "New cork and felt lose thickness in their first weeks of play. If all is set to land together now: "
                + gaps;
    }

    private LinksPage.PackedContact contact(ContactLine line) {
        return new LinksPage.PackedContact(
                OnBench.capital(names.contact(line.link())),
                bench.keywork().places().contains(line.link()) ? bench.placeAddress(line.link()) : "",
                figure("lost motion gained", line.loses()));
    }

    private LinksPage.PackedGap gap(GapLine line) {
        return new LinksPage.PackedGap(
                OnBench.capital(spot(line)),
                Figure.signed(bench.id(), "moves by", line.opens()),
                Figure.signed(bench.id(), "gap then", line.gap()),
                new State("stale", isSure(line) ? "opens" : "may open"));
    }

    /** At two standard uncertainties, as its ± is shown. */
    private static boolean isSure(GapLine line) {
        return line.gap().value() > 2 * line.gap().u();
    }

    private String spot(GapLine line) {
        return "under %s with %s pressed%s"
                .formatted(names.cup(line.watch().at()), names.key(line.watch().press()), names.held(line.watch()));
    }

    public static String whole(PlannedNumber days) {
        return Long.toString(Math.round(days.value()));
    }

    private LinksPage.PackedVent vent(VentLine line) {
        return new LinksPage.PackedVent(
                OnBench.capital(names.cup(line.cup())) + ", " + line.state(),
                figure("opens", line.opens()),
                figure("less than before", line.less()));
    }

    private LinksPage.PackedHeight height(HeightLine line) {
        Cup cup = bench.keywork().cups().get(line.cup());
        return new LinksPage.PackedHeight(
                bench.heading(cup),
                figure("set to", line.set()),
                figure("once packed", line.settled()),
                figure("higher by", line.rises()));
    }

    private Figure figure(String label, PlannedNumber number) {
        return Figure.of(bench.id(), label, number);
    }
}
