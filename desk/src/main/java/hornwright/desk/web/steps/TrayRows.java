package hornwright.desk.web.steps;

import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Rod;
import hornwright.bench.horn.RodKind;
import hornwright.bench.steps.RodOrder;
import hornwright.bench.steps.Tray;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The trays of a horn in words. */
public final class TrayRows {
    private final Keywork keywork;

    private TrayRows(Keywork keywork) {
        this.keywork = keywork;
    }

    /** @param key the key to be reached; anything else shows none */
    public static TrayPage of(OnBench bench, Frame frame, String key) {
        TrayRows rows = new TrayRows(bench.keywork());
        Optional<Key> chosen = bench.keywork().keys().find(key);
        return new TrayPage(
                frame,
                Next.of(bench),
                bench.id(),
                Tray.of(bench.keywork()).stream().map(rows::tray).toList(),
                bench.keywork().keys().stream()
                        .map(one -> new TrayPage.Choice(
                                one.id(),
                                OnBench.capital(one.name().display()),
                                one.id().equals(key)))
                        .toList(),
                chosen.map(one -> one.name().display()).orElse(""),
                chosen.map(one -> new RodOrder(bench.keywork())
                                .toReach(one).stream().map(rows::drawn).toList())
                        .orElse(List.of()));
    }

    private TrayPage.TrayRow tray(Tray tray) {
        return new TrayPage.TrayRow(
                tray.group().title(), tray.bags().stream().map(this::bag).toList());
    }

    private TrayPage.Bag bag(Tray.Bag bag) {
        return new TrayPage.Bag(
                bag.turn(),
                keywork.rods().size() - bag.turn() + 1,
                bag.rod().kind() == RodKind.ROD ? "rod" : "pivots",
                OnBench.capital(names(bag.keys())),
                bag.rod().removeAfter().stream()
                        .map(rod -> Integer.toString(turn(rod)))
                        .collect(Collectors.joining(", ")));
    }

    private String drawn(Rod rod) {
        return "%d: the %s of %s"
                .formatted(turn(rod.id()), rod.kind() == RodKind.ROD ? "rod" : "pivots", names(keywork.keysOn(rod)));
    }

    private int turn(String rod) {
        return keywork.removalOrder().indexOf(keywork.rods().get(rod)) + 1;
    }

    private static String names(List<Key> keys) {
        return keys.stream().map(key -> key.name().display()).collect(Collectors.joining(", "));
    }
}
