package hornwright.desk.keyworkfile;

import hornwright.bench.horn.Articulation;
import hornwright.bench.horn.BellKeySide;
import hornwright.bench.horn.OctaveLevers;
import hornwright.bench.horn.Pieces;
import hornwright.bench.horn.Switches;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;

/** The switches of a horn in JSON; the defaults are those of a common horn of the middle of the 20th century. */
public final class SwitchesJson {
    private SwitchesJson() {}

    public static Switches read(Fields f) {
        return new Switches(
                f.flagOr("sideFSharp", true),
                f.flagOr("highFSharp", false),
                f.flagOr("frontF", true),
                f.flagOr("forkedEFlat", false),
                f.choiceOr("bellKeys", Words.of(BellKeySide.class), BellKeySide.RIGHT),
                f.choiceOr("bellKeyPieces", Words.of(Pieces.class), Pieces.TWO_PIECE),
                f.choiceOr("gSharp", Words.of(Articulation.class), Articulation.ARTICULATED),
                f.choiceOr("lowCSharp", Words.of(Articulation.class), Articulation.ARTICULATED),
                f.choiceOr("octaveLevers", Words.of(OctaveLevers.class), OctaveLevers.ONE),
                f.choiceOr("sideLevers", Words.of(Pieces.class), Pieces.TWO_PIECE));
    }

    public static Out write(Switches s) {
        return Out.object()
                .put("sideFSharp", s.sideFSharp())
                .put("highFSharp", s.highFSharp())
                .put("frontF", s.frontF())
                .put("forkedEFlat", s.forkedEFlat())
                .put("bellKeys", s.bellKeys().word())
                .put("bellKeyPieces", s.bellKeyPieces().word())
                .put("gSharp", s.gSharp().word())
                .put("lowCSharp", s.lowCSharp().word())
                .put("octaveLevers", s.octaveLevers().word())
                .put("sideLevers", s.sideLevers().word());
    }
}
