package hornwright.bench.horn.variant;

import hornwright.bench.horn.Articulation;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.OctaveLevers;
import hornwright.bench.horn.Pieces;
import hornwright.bench.horn.Switches;
import java.util.ArrayList;
import java.util.List;

/** What cannot be derived: a keywork file holds the richer mechanism, and taking away is all that needs no maker. */
final class Refusals {
    private static final String OTHER_FILE = "; take a file that has it";

    private final Keywork base;
    private final Switches has;
    private final Switches wanted;
    private final List<String> found = new ArrayList<>();

    Refusals(Keywork base, Switches wanted) {
        this.base = base;
        this.has = base.switches();
        this.wanted = wanted;
    }

    List<String> all() {
        added(has.sideFSharp(), wanted.sideFSharp(), "a side F♯");
        refuse(
                wanted.highFSharp() && !has.highFSharp() && !HighFSharp.canBeMade(base),
                "this file has no high E to pattern a high F♯ on");
        added(has.frontF(), wanted.frontF(), "a front F");
        refuse(
                wanted.forkedEFlat() && !has.forkedEFlat() && !ForkedEFlat.canBeMade(base),
                "this file has no E in one piece to make a forked E♭ of");
        refuse(has.forkedEFlat() && !wanted.forkedEFlat(), "the forked E♭ of this file cannot be taken away");
        added(articulated(has.gSharp()), articulated(wanted.gSharp()), "an articulated G♯");
        added(articulated(has.lowCSharp()), articulated(wanted.lowCSharp()), "an articulated low C♯");
        added(twoPiece(has.bellKeyPieces()), twoPiece(wanted.bellKeyPieces()), "bell keys in two pieces");
        added(twoPiece(has.sideLevers()), twoPiece(wanted.sideLevers()), "side keys in two pieces");
        refuse(
                has.octaveLevers() == OctaveLevers.TWO && wanted.octaveLevers() == OctaveLevers.ONE,
                "this file has not one octave lever with a switch" + OTHER_FILE);
        refuse(
                has.octaveLevers() == OctaveLevers.ONE
                        && wanted.octaveLevers() == OctaveLevers.TWO
                        && !OctavePair.canBeMade(base),
                "this file has no octave switch to leave out");
        parts();
        return List.copyOf(found);
    }

    private void parts() {
        refuse(
                has.bellKeys() != wanted.bellKeys() && BellSides.bellCups(base).size() < 2,
                "this file has no two open bell keys to move");
        refuse(
                has.frontF() && !wanted.frontF() && Variants.frontF(base).isEmpty(),
                "no key here is called front F lever");
        refuse(
                has.sideFSharp()
                        && !wanted.sideFSharp()
                        && Variants.hole(base, "side F#").isEmpty(),
                "no hole here is called side F♯");
        refuse(
                articulated(has.gSharp())
                        && !articulated(wanted.gSharp())
                        && Table.gSharpLever(base).isEmpty(),
                "this file has no lever that holds G♯ shut");
    }

    private void added(boolean has, boolean wanted, String what) {
        refuse(wanted && !has, "this file has not " + what + OTHER_FILE);
    }

    private void refuse(boolean unless, String sentence) {
        if (unless) {
            found.add(sentence);
        }
    }

    private static boolean articulated(Articulation articulation) {
        return articulation == Articulation.ARTICULATED;
    }

    private static boolean twoPiece(Pieces pieces) {
        return pieces == Pieces.TWO_PIECE;
    }
}
