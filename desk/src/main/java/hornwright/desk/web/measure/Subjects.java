package hornwright.desk.web.measure;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.survey.ReadingKind;
import hornwright.desk.web.view.MeasureSheet;
import hornwright.desk.web.view.OnBench;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds the subjects of a sheet on one horn. */
public final class Subjects {
    private static final Set<PlaceKind> CORK_AND_FELT =
            EnumSet.of(PlaceKind.FOOT, PlaceKind.BUMPER, PlaceKind.GUARD, PlaceKind.LINK, PlaceKind.UPPER_STOP);

    private static final List<String> STAMPED = List.of("body", "neck", "bell", "keys", "guards");

    private Subjects() {}

    public static List<Subject> of(OnBench bench, MeasureSheet sheet) {
        return switch (sheet) {
            case CUPS, HEIGHTS, DEPTHS, ARMS, TRIALS ->
                bench.keywork().cups().stream()
                        .map(cup -> ofCup(bench, cup, cup.id()))
                        .toList();
            case HOLES, RIMS ->
                bench.keywork().cups().stream()
                        .map(cup -> ofCup(bench, cup, cup.hole()))
                        .toList();
            case OLD_MATERIAL ->
                bench.keywork().places().stream()
                        .filter(place -> CORK_AND_FELT.contains(place.kind()))
                        .map(place -> ofPlace(bench, place))
                        .toList();
            case TOUCHES ->
                bench.keywork().keys().stream()
                        .filter(key -> key.touch() != null)
                        .map(key -> ofKey(bench, key))
                        .toList();
            case PLAY ->
                bench.keywork().keys().stream().map(key -> ofKey(bench, key)).toList();
            case STAMPS, LEAK ->
                (sheet == MeasureSheet.LEAK ? List.of("horn") : STAMPED)
                        .stream()
                                .map(part -> new Subject(part, OnBench.capital(part), null, name -> Optional.empty()))
                                .toList();
        };
    }

    /** What the pattern says of a point; empty where it says nothing. Only to notice a slip, never to fill one in. */
    static Optional<Double> expected(OnBench bench, ReadingKind kind, String of) {
        var keywork = bench.keywork();
        Optional<Cup> cup = keywork.cups().find(of);
        return switch (kind) {
            case CUP_INSIDE -> cup.map(Cup::insideDiameterMm);
            case CUP_DEPTH -> cup.map(Cup::depthMm);
            case AXIS_TO_CENTRE -> cup.map(Cup::armMm);
            case FRONT_HEIGHT -> cup.map(Cup::heightFrontMm);
            case HOLE -> keywork.holes().find(of).map(hole -> hole.diameterMm());
            case THICKNESS ->
                keywork.places()
                        .find(of)
                        .map(place -> place.asBuilt().thicknessMm())
                        .filter(thickness -> thickness > 0);
            default -> Optional.empty();
        };
    }

    private static Subject ofCup(OnBench bench, Cup cup, String id) {
        return new Subject(
                id,
                bench.heading(cup),
                bench.padOf(cup).map(Place::id).orElse(null),
                name -> bench.numberOf(cup, name));
    }

    private static Subject ofPlace(OnBench bench, Place place) {
        return new Subject(
                place.id(),
                OnBench.capital(place.display()),
                place.id(),
                name -> bench.plan().number(place.id(), name));
    }

    private static Subject ofKey(OnBench bench, Key key) {
        return new Subject(
                key.id(),
                OnBench.capital(key.name().display()),
                null,
                name -> bench.keywork().cupOf(key).flatMap(cup -> bench.numberOf(cup, name)));
    }
}
