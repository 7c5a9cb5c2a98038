package hornwright.bench.horn;

/**
 * The choices in which horns of one voice differ; each decides which cups, keys and links are there.
 */
public record Switches(
        boolean sideFSharp,
        boolean highFSharp,
        boolean frontF,
        boolean forkedEFlat,
        BellKeySide bellKeys,
        Pieces bellKeyPieces,
        Articulation gSharp,
        Articulation lowCSharp,
        OctaveLevers octaveLevers,
        Pieces sideLevers) {}
