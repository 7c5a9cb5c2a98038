package hornwright.bench.plan;

import hornwright.bench.horn.ById;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything the bench needs to know about one horn at one moment.
 *
 * @param places every place of the horn, in the order of its keywork
 * @param order every step of the work, each after everything it needs
 * @param removal rods in the order they come off
 * @param missing what to measure or look at next, most useful first
 * @param orders goods, pads first
 * @param cuts pieces of cork and felt
 * @param stale readings that no longer count
 */
public record Plan(
        ById<PlannedPlace> places,
        List<PlannedStep> order,
        List<Removal> removal,
        List<Missing> missing,
        List<OrderLine> orders,
        List<CutLine> cuts,
        List<Warning> warnings,
        List<StaleReading> stale,
        Money money,
        List<PlannedLink> links,
        Becauses becauses) {
    public Plan {
        order = List.copyOf(order);
        removal = List.copyOf(removal);
        missing = List.copyOf(missing);
        orders = List.copyOf(orders);
        cuts = List.copyOf(cuts);
        warnings = List.copyOf(warnings);
        stale = List.copyOf(stale);
        links = List.copyOf(links);
    }

    public PlannedPlace place(String id) {
        return places.get(id);
    }

    public Optional<PlannedNumber> number(String place, NumberName name) {
        return places.find(place).flatMap(planned -> planned.number(name));
    }

    /** The plan with one more chapter's numbers, advice and warnings; places it does not have are passed over. */
    public Plan with(Chapter chapter) {
        List<PlannedPlace> more =
                places.stream().map(place -> with(place, chapter)).toList();
        List<Warning> warned = new ArrayList<>(warnings);
        warned.addAll(chapter.warnings());
        return new Plan(
                ById.of(more),
                order,
                removal,
                missing,
                orders,
                cuts,
                warned,
                stale,
                money,
                links,
                becauses.and(chapter.becauses()));
    }

    /** The plan with what to add or take at contacts, in the order the bench sets them. */
    public Plan withLinks(List<PlannedLink> planned, Becauses reasons) {
        return new Plan(
                places, order, removal, missing, orders, cuts, warnings, stale, money, planned, becauses.and(reasons));
    }

    /** What is to be done at a contact; empty for one that no regulation decides. */
    public Optional<PlannedLink> link(String id) {
        return links.stream().filter(link -> link.link().equals(id)).findFirst();
    }

    private static PlannedPlace with(PlannedPlace place, Chapter chapter) {
        Map<NumberName, PlannedNumber> numbers = new LinkedHashMap<>(place.numbers());
        numbers.putAll(chapter.numbers().getOrDefault(place.id(), Map.of()));
        List<Advice> advice = new ArrayList<>(place.advice());
        advice.addAll(chapter.advice().getOrDefault(place.id(), List.of()));
        return new PlannedPlace(
                place.id(),
                place.asBuilt(),
                place.found(),
                place.treatment(),
                place.why(),
                place.material(),
                numbers,
                place.choices(),
                place.padClass(),
                place.provisional(),
                advice);
    }
}
