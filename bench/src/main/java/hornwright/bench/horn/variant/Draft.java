package hornwright.bench.horn.variant;

import hornwright.bench.horn.ById;
import hornwright.bench.horn.ClosingSet;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Hold;
import hornwright.bench.horn.Identified;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.LinkedSet;
import hornwright.bench.horn.LowTable;
import hornwright.bench.horn.OctaveState;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Rod;
import hornwright.bench.horn.Switches;
import hornwright.bench.horn.ToneHole;
import java.util.ArrayList;
import java.util.List;

/** A keywork while it is being changed: its lists, open to edits, put together again at the end. */
final class Draft {
    final Keywork base;
    final List<ToneHole> holes;
    final List<Cup> cups;
    final List<Key> keys;
    final List<Link> links;
    final List<Rod> rods;
    final List<Place> places;
    final List<ClosingSet> sets;
    final List<Hold> holds;
    final List<LinkedSet> linkedSets;
    final List<OctaveState> octaveStates;
    final List<Fingering> fingerings;
    LowTable lowTable;

    Draft(Keywork base) {
        this.base = base;
        this.holes = new ArrayList<>(base.holes().list());
        this.cups = new ArrayList<>(base.cups().list());
        this.keys = new ArrayList<>(base.keys().list());
        this.links = new ArrayList<>(base.links().list());
        this.rods = new ArrayList<>(base.rods().list());
        this.places = new ArrayList<>(base.places().list());
        this.sets = new ArrayList<>(base.sets());
        this.holds = new ArrayList<>(base.holds());
        this.linkedSets = new ArrayList<>(base.linkedSets());
        this.octaveStates = new ArrayList<>(base.octaveStates());
        this.fingerings = new ArrayList<>(base.fingerings().list());
        this.lowTable = base.lowTable();
    }

    Keywork with(Switches switches) {
        return new Keywork(
                base.id(),
                base.maker(),
                base.name(),
                base.voice(),
                switches,
                base.tube(),
                ById.of(holes),
                ById.of(cups),
                ById.of(keys),
                ById.of(links),
                ById.of(rods),
                ById.of(places),
                sets,
                holds,
                linkedSets,
                octaveStates,
                lowTable,
                ById.of(fingerings));
    }

    Keywork done() {
        return with(base.switches());
    }

    /** Puts a changed member where the one of its id stands. */
    static <T extends Identified> void put(List<T> all, T changed) {
        all.replaceAll(one -> one.id().equals(changed.id()) ? changed : one);
    }

    /** Puts a new member right behind the one of this id. */
    static <T extends Identified> void putAfter(List<T> all, String id, T added) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).id().equals(id)) {
                all.add(i + 1, added);
                return;
            }
        }
        all.add(added);
    }
}
