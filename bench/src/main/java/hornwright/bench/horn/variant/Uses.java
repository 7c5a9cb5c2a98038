package hornwright.bench.horn.variant;

import hornwright.bench.horn.Clearance;
import hornwright.bench.horn.ClosingSet;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Hold;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.LinkKind;
import hornwright.bench.horn.LinkedSet;
import hornwright.bench.horn.LowTable;
import hornwright.bench.horn.OctaveState;
import hornwright.bench.horn.TableClearance;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Keeps of sets, holds, states and clearances what the links that are left can still do. */
final class Uses {
    private static final Set<LinkKind> CLOSING = EnumSet.of(LinkKind.CLOSES);
    private static final Set<LinkKind> SHUTTING = EnumSet.of(LinkKind.CLOSES, LinkKind.HOLDS_SHUT);

    private final Draft draft;

    private Uses(Draft draft) {
        this.draft = draft;
    }

    static void keepWhatIsThere(Draft draft) {
        Uses uses = new Uses(draft);
        uses.sets();
        uses.holds();
        uses.linkedSets();
        uses.octave();
        uses.lowTable();
    }

    private void sets() {
        List<ClosingSet> all = draft.sets.stream()
                .filter(set -> hasKey(set.press()))
                .map(set -> new ClosingSet(set.press(), reached(set.press(), CLOSING, set.closes())))
                .filter(set -> !set.closes().isEmpty())
                .toList();
        draft.sets.clear();
        draft.sets.addAll(all);
    }

    private void holds() {
        List<Hold> all = draft.holds.stream()
                .filter(hold -> hasKey(hold.press()))
                .map(hold -> new Hold(
                        hold.press(),
                        reached(hold.press(), SHUTTING, hold.holds()),
                        Optional.ofNullable(hold.whileReleased())
                                .filter(this::hasKey)
                                .orElse(null)))
                .filter(hold -> !hold.holds().isEmpty())
                .toList();
        draft.holds.clear();
        draft.holds.addAll(all);
    }

    private List<String> reached(String press, Set<LinkKind> kinds, List<String> wanted) {
        Set<String> keys = follow(press, link -> kinds.contains(link.kind()), false);
        return draft.cups.stream()
                .filter(cup -> wanted.contains(cup.id()) && keys.contains(cup.key()))
                .map(Cup::id)
                .sorted(Comparator.comparingInt(wanted::indexOf))
                .toList();
    }

    private Set<String> follow(String from, Predicate<Link> along, boolean bothWays) {
        Set<String> seen = new HashSet<>(Set.of(from));
        Deque<String> next = new ArrayDeque<>(seen);
        while (!next.isEmpty()) {
            String here = next.removeFirst();
            for (Link link : draft.links) {
                if (!along.test(link)) {
                    continue;
                }
                if (link.driver().equals(here) && seen.add(link.follower())) {
                    next.addLast(link.follower());
                }
                if (bothWays && link.follower().equals(here) && seen.add(link.driver())) {
                    next.addLast(link.driver());
                }
            }
        }
        return seen;
    }

    /** Pads are kept together only while links still make them close together. */
    private void linkedSets() {
        List<LinkedSet> all = draft.linkedSets.stream()
                .map(set -> new LinkedSet(set.name(), together(set.cups())))
                .filter(set -> set.cups().size() > 1)
                .toList();
        draft.linkedSets.clear();
        draft.linkedSets.addAll(all);
    }

    private List<String> together(List<String> cups) {
        List<Cup> there = cups.stream()
                .flatMap(id -> draft.cups.stream().filter(cup -> cup.id().equals(id)))
                .toList();
        if (there.isEmpty()) {
            return List.of();
        }
        Set<String> tied = follow(there.getFirst().key(), link -> SHUTTING.contains(link.kind()), true);
        return there.stream()
                .filter(cup -> tied.contains(cup.key()))
                .map(Cup::id)
                .toList();
    }

    private void octave() {
        draft.octaveStates.removeIf(state -> !state.pressed().stream().allMatch(this::hasKey));
        draft.octaveStates.replaceAll(state -> new OctaveState(
                state.name(),
                state.pressed(),
                Optional.ofNullable(state.openVent())
                        .filter(vent ->
                                draft.holes.stream().anyMatch(hole -> hole.id().equals(vent)))
                        .orElse(null),
                kept(state.clearances())));
    }

    private void lowTable() {
        LowTable was = draft.lowTable;
        Set<String> places = ids(draft.places.stream().map(place -> place.id()));
        draft.lowTable = new LowTable(
                kept(was.gSharpTabs()),
                keptAtTable(was.cSharpHoldDown()),
                keptAtTable(was.bFlatOverB()),
                was.rollers().stream().filter(places::contains).toList());
    }

    private List<Clearance> kept(Collection<Clearance> all) {
        Set<String> links = ids(draft.links.stream().map(Link::id));
        return all.stream().filter(one -> links.contains(one.link())).toList();
    }

    private List<TableClearance> keptAtTable(Collection<TableClearance> all) {
        Set<String> links = ids(draft.links.stream().map(Link::id));
        return all.stream().filter(one -> links.contains(one.link())).toList();
    }

    private static Set<String> ids(Stream<String> ids) {
        return new HashSet<>(ids.toList());
    }

    private boolean hasKey(String id) {
        return draft.keys.stream().anyMatch(key -> key.id().equals(id));
    }
}
