package hornwright.desk.jobfile;

import hornwright.bench.horn.AdjustingScrew;
import hornwright.bench.horn.Layer;
import hornwright.bench.horn.Link;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlannedLink;
import hornwright.bench.plan.regulation.SettledContact;
import hornwright.desk.json.Out;
import java.util.List;
import java.util.Optional;

/** One contact between two keys, with what to add or take there and what was settled. */
final class LinkOut {
    private final Plan plan;
    private final List<SettledContact> settled;
    private final NumberJson numbers;

    LinkOut(Plan plan, List<SettledContact> settled, NumberJson numbers) {
        this.plan = plan;
        this.settled = settled;
        this.numbers = numbers;
    }

    Out write(Link link) {
        Optional<PlannedLink> planned = plan.link(link.id()).filter(one -> one.error() != null);
        AdjustingScrew screw = link.screw();
        return Out.object()
                .put("id", link.id())
                .put("kind", link.kind().word())
                .put("driver", link.driver())
                .put("follower", link.follower())
                .putTexts("places", link.layers().stream().map(Layer::place).toList())
                .put("screw", screw == null ? null : Out.object().put("pitch_mm", screw.pitchMm()))
                .put(
                        "error",
                        planned.map(PlannedLink::error).map(numbers::write).orElse(null))
                .put(
                        "change",
                        planned.map(PlannedLink::change).map(numbers::write).orElse(null))
                .put(
                        "turns",
                        planned.map(PlannedLink::turns).map(numbers::write).orElse(null))
                .put(
                        "pulls",
                        planned.map(PlannedLink::pulls).map(numbers::write).orElse(null))
                .put("work", planned.map(one -> one.work().word()).orElse(null))
                .put("told", planned.map(PlannedLink::told).orElse(false))
                .put("settled", settled(link).orElse(null));
    }

    private Optional<Out> settled(Link link) {
        return settled.stream()
                .filter(contact -> contact.link().id().equals(link.id()))
                .findFirst()
                .map(contact -> Out.object()
                        .put("change_mm", contact.decision().changeMm())
                        .put("words", contact.words())
                        .put("why", contact.decision().why())
                        .put("stale", contact.stale()));
    }
}
