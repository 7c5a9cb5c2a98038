package hornwright.bench.horn.variant;

import hornwright.bench.horn.Articulation;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Pieces;
import hornwright.bench.horn.Switches;
import hornwright.bench.horn.ToneHole;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * Horns that differ from a keywork by switches. What a file has can be left out or simplified; what it lacks is only added
 * where it can be patterned on a neighbour. Ids of what stays are those of the file.
 */
public final class Variants {
    private Variants() {}

    /** Why these switches cannot be had from this keywork, a sentence each; empty when they can. */
    public static List<String> refusals(Keywork base, Switches wanted) {
        return new Refusals(base, wanted).all();
    }

    /**
     * The horn with these switches; the base itself when they are its own.
     *
     * @throws IllegalArgumentException with every refusal when it cannot be had
     */
    public static Keywork of(Keywork base, Switches wanted) {
        List<String> refusals = refusals(base, wanted);
        if (!refusals.isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", refusals));
        }
        return base.switches().equals(wanted) ? base : new Draft(changed(base, wanted)).with(wanted);
    }

    private static Keywork changed(Keywork base, Switches wanted) {
        Switches has = base.switches();
        List<Step> steps = new ArrayList<>();
        steps.add(new Step(has.sideFSharp() && !wanted.sideFSharp(), horn -> without(horn, "side F#")));
        steps.add(new Step(has.highFSharp() && !wanted.highFSharp(), horn -> without(horn, "high F#")));
        steps.add(new Step(!has.highFSharp() && wanted.highFSharp(), HighFSharp::added));
        steps.add(new Step(has.frontF() && !wanted.frontF(), Variants::withoutFrontF));
        steps.add(new Step(!has.forkedEFlat() && wanted.forkedEFlat(), ForkedEFlat::added));
        steps.add(new Step(has.octaveLevers() != wanted.octaveLevers(), OctavePair::made));
        steps.add(new Step(has.bellKeys() != wanted.bellKeys(), horn -> BellSides.at(horn, wanted.bellKeys())));
        steps.add(new Step(turnsPlain(has.gSharp(), wanted.gSharp()), Table::plainGSharp));
        steps.add(new Step(turnsPlain(has.lowCSharp(), wanted.lowCSharp()), Table::plainCSharp));
        steps.add(new Step(joins(has.bellKeyPieces(), wanted.bellKeyPieces()), Table::onePieceBellKeys));
        steps.add(new Step(joins(has.sideLevers(), wanted.sideLevers()), SideLevers::onePiece));
        Keywork horn = base;
        for (Step step : steps) {
            horn = step.applies() ? step.change().apply(horn) : horn;
        }
        return horn;
    }

    private record Step(boolean applies, UnaryOperator<Keywork> change) {}

    private static boolean turnsPlain(Articulation has, Articulation wanted) {
        return has == Articulation.ARTICULATED && wanted == Articulation.PLAIN;
    }

    private static boolean joins(Pieces has, Pieces wanted) {
        return has == Pieces.TWO_PIECE && wanted == Pieces.ONE_PIECE;
    }

    private static Keywork without(Keywork horn, String hole) {
        Set<String> keys = horn.cups().stream()
                .filter(cup -> horn.holeOf(cup).name().answersTo(hole))
                .map(cup -> cup.key())
                .collect(Collectors.toSet());
        return Removal.ofKeys(horn, keys);
    }

    private static Keywork withoutFrontF(Keywork horn) {
        return Removal.ofKeys(horn, Set.of(frontF(horn).orElseThrow().id()));
    }

    static Optional<Key> frontF(Keywork horn) {
        return horn.keys().stream()
                .filter(key ->
                        key.name().answersTo("front F lever") || key.name().answersTo("front F"))
                .findFirst();
    }

    static Optional<ToneHole> hole(Keywork horn, String name) {
        return horn.holes().stream().filter(hole -> hole.name().answersTo(name)).findFirst();
    }
}
