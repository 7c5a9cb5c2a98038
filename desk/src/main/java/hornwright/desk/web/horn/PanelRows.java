package hornwright.desk.web.horn;

import hornwright.bench.archive.FitKind;
import hornwright.bench.care.Hazard;
import hornwright.bench.horn.Layer;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.plan.Advice;
import hornwright.bench.plan.Built;
import hornwright.bench.plan.ClassOfPad;
import hornwright.bench.plan.Found;
import hornwright.bench.plan.PadChoice;
import hornwright.bench.plan.PlannedPlace;
import hornwright.bench.survey.Condition;
import hornwright.bench.survey.Originality;
import hornwright.bench.survey.PadClass;
import hornwright.bench.survey.StoredPart;
import hornwright.desk.web.fits.InsteadRows;
import hornwright.desk.web.photo.PhotoRows;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.Palette;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.State;
import hornwright.desk.web.view.Written;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Writes the panel of one place. */
public final class PanelRows {
    private final OnBench bench;
    private final PhotoRows photos;

    public PanelRows(OnBench bench) {
        this.bench = bench;
        this.photos = new PhotoRows(bench);
    }

    public PlacePanel of(Place place, String typedThickness, String fault, String fresh) {
        PlannedPlace planned = bench.plan().place(place.id());
        Found found = planned.found();
        List<PlacePanel.Counsel> counsel =
                planned.advice().stream().map(PanelRows::counsel).toList();
        return new PlacePanel(
                bench.id(),
                place.id(),
                OnBench.capital(place.display()),
                place.kind().meaning(),
                State.of(planned),
                found == null ? "" : found(found),
                asBuilt(planned.asBuilt()),
                planned.asBuilt().says(),
                treatment(planned),
                planned.why(),
                Objects.requireNonNullElse(planned.provisional(), ""),
                planned.numbers().entrySet().stream()
                        .map(entry -> Figure.of(bench.id(), entry.getKey(), entry.getValue())
                                .withLabel(OnBench.capital(entry.getKey().label())))
                        .toList(),
                planned.choices().stream().map(this::thickness).toList(),
                padClass(place, planned),
                counsel,
                counsel.stream().allMatch(one -> one.cautions().isEmpty()) ? "" : Hazard.WHO_DECIDES,
                kept(place),
                bench.job().notes().getOrDefault(place.id(), ""),
                photos.of(place.id()),
                photos.form("", place.id(), bench.placeAddress(place.id()) + "#place-photos", fresh),
                form(place, found, typedThickness, fault),
                lever(place),
                instead(place),
                kin(place),
                bench.history().seq(),
                fresh);
    }

    private List<PlacePanel.ClassForm> padClass(Place place, PlannedPlace planned) {
        ClassOfPad pad = planned.padClass();
        if (pad == null || !(place.belongsTo() instanceof Owner.OfCup cup)) {
            return List.of();
        }
        return List.of(new PlacePanel.ClassForm(
                pad.is().word(),
                pad.why(),
                bench.job().decisions().containsKey("pad-class." + cup.id()),
                Stream.of(PadClass.values())
                        .map(one -> new PlacePanel.Option(one.name(), one.word(), one == pad.is()))
                        .toList()));
    }

    /** "replace with what the factory fitted, kid leather over felt". */
    private static String treatment(PlannedPlace planned) {
        String done = planned.treatment().spoken();
        return planned.isRenewed() && planned.material() != null ? done + ", " + planned.material() : done;
    }

    private String instead(Place place) {
        boolean cut = bench.keywork().keys().stream()
                        .anyMatch(key -> carries(key.stop().layers(), place))
                || bench.keywork().links().stream().anyMatch(link -> carries(link.layers(), place));
        boolean told = cut
                || FitKind.at(place.kind()).isPresent()
                || InsteadRows.keyOfCentre(bench, place).isPresent();
        return told ? bench.address("instead/" + place.id()) : "";
    }

    private static boolean carries(List<Layer> layers, Place place) {
        return layers.stream().anyMatch(layer -> layer.place().equals(place.id()));
    }

    private String lever(Place place) {
        String key = keyOf(place.belongsTo());
        return key.isEmpty() ? "" : bench.address("lever/" + key);
    }

    /** The key a place moves with; "" for what moves with none. */
    private String keyOf(Owner owner) {
        return switch (owner) {
            case Owner.OfCup cup -> bench.keywork().cups().get(cup.id()).key();
            case Owner.OfKey one -> one.id();
            case Owner.OfLink link -> bench.keywork().links().get(link.id()).driver();
            default -> "";
        };
    }

    /** Of the same cup, key or contact, and what lies under any of them; nothing for parts of the tube. */
    private List<PlacePanel.Kin> kin(Place place) {
        String key = keyOf(place.belongsTo());
        return bench.keywork().places().stream()
                .filter(other -> !other.equals(place))
                .filter(other -> key.isEmpty()
                        ? place.id().equals(other.beneath()) || other.id().equals(place.beneath())
                        : keyOf(other.belongsTo()).equals(key))
                .map(other -> new PlacePanel.Kin(
                        other.id(), OnBench.capital(other.display()), bench.placeAddress(other.id()) + "#place"))
                .toList();
    }

    private String kept(Place place) {
        StoredPart part = bench.job().keeping().parts().get(place.id());
        return part == null ? "" : joined(part.what(), "in " + part.store(), "since " + Clocks.day(part.when()));
    }

    private static String found(Found found) {
        return joined(
                found.material() == null ? "nothing" : found.material(),
                found.colour(),
                found.thicknessMm() == null ? null : Written.plain(found.thicknessMm()) + " mm",
                found.condition().word(),
                found.originality() == Originality.UNKNOWN
                        ? null
                        : found.originality().word(),
                found.byGroup() ? "by its group" : null);
    }

    private static String asBuilt(Built built) {
        return joined(
                built.material() == null ? "not known" : built.material(),
                built.colour(),
                built.thicknessMm() == null
                        ? null
                        : (built.atLeast() ? "at least " : "") + Written.plain(built.thicknessMm()) + " mm");
    }

    private PlacePanel.Thickness thickness(PadChoice choice) {
        return new PlacePanel.Thickness(
                Written.plain(choice.thicknessMm()) + " mm",
                choice.onShelf() == 0 ? "none" : "" + choice.onShelf(),
                Figure.of(bench.id(), "left to float", choice.left()),
                choice.fit().word(),
                choice.fit() == PadChoice.Fit.WORKS);
    }

    private static PlacePanel.Counsel counsel(Advice advice) {
        return new PlacePanel.Counsel(
                advice.words(),
                advice.cautions().stream()
                        .flatMap(hazard -> hazard.cautions().stream())
                        .toList(),
                advice.recheck());
    }

    private static PlacePanel.FindingForm form(
            Place place, @Nullable Found found, String typedThickness, String fault) {
        String material = found == null || found.material() == null ? "" : found.material();
        Stream<String> words = Stream.concat(
                Palette.of(place.kind()).stream(), material.isEmpty() ? Stream.of() : Stream.of(material));
        return new PlacePanel.FindingForm(
                words.distinct()
                        .map(word -> new PlacePanel.Option(word, word, word.equals(material)))
                        .toList(),
                Stream.of(Condition.values())
                        .map(condition -> new PlacePanel.Option(
                                condition.name(), condition.word(), found != null && found.condition() == condition))
                        .toList(),
                Stream.of(Originality.values())
                        .map(origin -> new PlacePanel.Option(
                                origin.name(), origin.word(), found != null && found.originality() == origin))
                        .toList(),
                !typedThickness.isEmpty() || found == null || found.thicknessMm() == null
                        ? typedThickness
                        : Written.plain(found.thicknessMm()),
                material,
                fault);
    }

    private static String joined(@Nullable String... parts) {
        return String.join(
                ", ",
                Stream.of(parts).filter(part -> part != null && !part.isEmpty()).toList());
    }
}
