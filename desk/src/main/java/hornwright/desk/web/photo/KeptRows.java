package hornwright.desk.web.photo;

import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Place;
import hornwright.bench.plan.Found;
import hornwright.bench.plan.PlannedPlace;
import hornwright.bench.steps.Tray;
import hornwright.bench.survey.Originality;
import hornwright.bench.survey.StoredPart;
import hornwright.desk.paper.BagLabel;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PhotoForm;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.Written;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes what is kept of a horn, what will be, and the labels of both bags and trays. */
public final class KeptRows {
    private final OnBench bench;

    public KeptRows(OnBench bench) {
        this.bench = bench;
    }

    public List<KeptPage.Bag> bags() {
        return bench.job().keeping().parts().values().stream()
                .map(part -> new KeptPage.Bag(
                        part.place(),
                        nameOf(part.place()),
                        bench.placeAddress(part.place()),
                        part.what(),
                        part.store(),
                        Clocks.day(part.when())))
                .toList();
    }

    /** Originals that the plan renews and nobody has put by. */
    public List<KeptPage.Group> coming() {
        Map<String, List<KeptPage.Part>> byGroup = new LinkedHashMap<>();
        for (Place place : bench.keywork().places()) {
            PlannedPlace planned = bench.plan().place(place.id());
            if (comesOff(planned) && !bench.job().keeping().parts().containsKey(place.id())) {
                byGroup.computeIfAbsent(groupOf(place), none -> new ArrayList<>())
                        .add(new KeptPage.Part(place.id(), nameOf(place.id()), what(place.id())));
            }
        }
        return byGroup.entrySet().stream()
                .map(entry -> new KeptPage.Group(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static boolean comesOff(PlannedPlace planned) {
        Found found = planned.found();
        return planned.isRenewed() && found != null && found.originality() == Originality.ORIGINAL;
    }

    /** Every place, for what is kept although the plan does not ask for it. */
    public List<PhotoForm.Section> places() {
        Map<String, List<PlacePanel.Option>> byGroup = new LinkedHashMap<>();
        for (Place place : bench.keywork().places()) {
            byGroup.computeIfAbsent(groupOf(place), none -> new ArrayList<>())
                    .add(new PlacePanel.Option(place.id(), nameOf(place.id()), false));
        }
        return byGroup.entrySet().stream()
                .map(entry -> new PhotoForm.Section(entry.getKey(), entry.getValue()))
                .toList();
    }

    /** What is there now, in words, to be written on the bag. */
    public String what(String place) {
        Found found = bench.plan().places().find(place).map(PlannedPlace::found).orElse(null);
        if (found == null || found.material() == null) {
            return "";
        }
        return found.material()
                + (found.thicknessMm() == null ? "" : ", " + Written.plain(found.thicknessMm()) + " mm");
    }

    /** @param address where this program is reached, without a slash at its end */
    public List<BagLabel> bagLabels(String address) {
        return bench.job().keeping().parts().values().stream()
                .map(part -> bagLabel(part, address))
                .toList();
    }

    private BagLabel bagLabel(StoredPart part, String address) {
        String what = part.what().isEmpty() ? "original" : part.what();
        return new BagLabel(
                nameOf(part.place()),
                what + ", put by " + Clocks.day(part.when()),
                part.store(),
                bench.id() + " " + part.place(),
                address + bench.placeAddress(part.place()));
    }

    public List<BagLabel> trayLabels(String address) {
        return Tray.of(bench.keywork()).stream()
                .map(tray -> new BagLabel(
                        tray.group().title() + ", tray",
                        tray.bags().stream()
                                .flatMap(bag -> bag.keys().stream())
                                .map(key -> key.name().display())
                                .collect(Collectors.joining(", ")),
                        bags(tray),
                        bench.id() + " " + tray.group().word(),
                        address + bench.address("trays") + "#" + tray.group().word()))
                .toList();
    }

    private static String bags(Tray tray) {
        String turns =
                tray.bags().stream().map(bag -> Integer.toString(bag.turn())).collect(Collectors.joining(", "));
        return (tray.bags().size() == 1 ? "bag " : "bags ") + turns;
    }

    private String groupOf(Place place) {
        return bench.keywork().groupOf(place).map(KeyGroup::title).orElse("Tube and neck");
    }

    private String nameOf(String place) {
        return OnBench.capital(
                bench.keywork().places().find(place).map(Place::display).orElse(place));
    }
}
