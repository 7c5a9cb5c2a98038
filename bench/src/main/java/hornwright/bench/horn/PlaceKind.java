package hornwright.bench.horn;

/**
 * The kinds of place on a horn. The word is also the first part of a place's id.
 */
public enum PlaceKind implements Word {
    /** The pad in its cup, which makes the seal. */
    PAD("pad", "the pad in its cup, which makes the seal"),
    /** The disc that holds the middle of a pad and reflects sound. */
    RESONATOR("resonator", "the disc that holds the middle of a pad and reflects sound"),
    /** The rivet in the middle of a small pad. */
    RIVET("rivet", "the rivet in the middle of a small pad"),
    /** The stitched or bare middle of a pad that has neither resonator nor rivet. */
    PAD_CENTRE("pad-centre", "the stitched or bare middle of a pad that has neither resonator nor rivet"),
    /** What a pad, cork or felt is stuck with; under a pad it is also the adjusting variable. */
    ADHESIVE("adhesive", "what a pad, cork or felt is stuck with; under a pad it is also the adjusting variable"),
    /** Cork or felt on the tail of a key, which sets how far it opens. */
    FOOT("foot", "cork or felt on the tail of a key, which sets how far it opens"),
    /** The felt on the body that a key foot or lever meets. */
    BUMPER("bumper", "the felt on the body that a key foot or lever meets"),
    /** The felt in a key guard that an opening cup meets; not the same as stack foot felt. */
    GUARD("guard", "the felt in a key guard that an opening cup meets; not the same as stack foot felt"),
    /** Cork or felt where one key acts on another. */
    LINK("link", "cork or felt where one key acts on another"),
    /** Tubing over a pin or ring where two parts slide. */
    SLEEVE("sleeve", "tubing over a pin or ring where two parts slide"),
    /** The needle or flat spring of a key. */
    SPRING("spring", "the needle or flat spring of a key"),
    /** The cork the mouthpiece sits on. */
    NECK_CORK("neck-cork", "the cork the mouthpiece sits on"),
    /** The plain end of the neck that seals in the receiver. */
    TENON("tenon", "the plain end of the neck that seals in the receiver"),
    /** The socket that takes and clamps the tenon. */
    NECK_RECEIVER("neck-receiver", "the socket that takes and clamps the tenon"),
    /** The screw that clamps the receiver. */
    NECK_SCREW("neck-screw", "the screw that clamps the receiver"),
    /** The strip under the neck that keeps it from pulling down. */
    NECK_BRACE("neck-brace", "the strip under the neck that keeps it from pulling down"),
    /** The soldered tube of an octave vent. */
    PIP("pip", "the soldered tube of an octave vent"),
    /** The plug that protects the receiver in its case. */
    END_PLUG("end-plug", "the plug that protects the receiver in its case"),
    /** The mother-of-pearl under a finger. */
    PEARL("pearl", "the mother-of-pearl under a finger"),
    /** A roller between two touches. */
    ROLLER("roller", "a roller between two touches"),
    /** Where the left thumb lies. */
    THUMB_REST("thumb-rest", "where the left thumb lies"),
    /** Where the right thumb carries. */
    THUMB_HOOK("thumb-hook", "where the right thumb carries"),
    /** The ring the sling hooks into. */
    STRAP_RING("strap-ring", "the ring the sling hooks into"),
    /** A rod or pivot screw head, which shows old work. */
    SCREW_HEAD("screw-head", "a rod or pivot screw head, which shows old work"),
    /** The saddle that steadies a long rod between its posts. */
    SADDLE("saddle", "the saddle that steadies a long rod between its posts"),
    /** The guide a long side key runs in. */
    GUIDE("guide", "the guide a long side key runs in"),
    /** The stop that ends the upward travel of the thumb lever. */
    UPPER_STOP("upper-stop", "the stop that ends the upward travel of the thumb lever"),
    /** Where the octave rocker is pushed. */
    ROCKER_CONTACT("rocker-contact", "where the octave rocker is pushed"),
    /** The metal guard over a large cup. */
    KEY_GUARD("key-guard", "the metal guard over a large cup"),
    /** The screw that carries a guard and adjusts its felt. */
    GUARD_SCREW("guard-screw", "the screw that carries a guard and adjusts its felt"),
    /** A brace between body, bow and bell. */
    BRACE("brace", "a brace between body, bow and bell"),
    /** A ring soldered to the tube: ferrule, bow band or tone-hole ring. */
    SOLDERED_RING("soldered-ring", "a ring soldered to the tube: ferrule, bow band or tone-hole ring"),
    /** Lacquer, plate or wash on body, keys or bell. */
    FINISH("finish", "lacquer, plate or wash on body, keys or bell"),
    /** The engraving, which polishing wears. */
    ENGRAVING("engraving", "the engraving, which polishing wears"),
    /** A serial or assembly number; the quickest proof of a mixed horn. */
    STAMP("stamp", "a serial or assembly number; the quickest proof of a mixed horn");

    private final String word;
    private final String meaning;

    PlaceKind(String word, String meaning) {
        this.word = word;
        this.meaning = meaning;
    }

    @Override
    public String word() {
        return word;
    }

    /** The kind as it is read aloud: "neck cork". */
    public String spoken() {
        return word.replace('-', ' ');
    }

    /** What this kind of place is and does, in half a sentence. */
    public String meaning() {
        return meaning;
    }
}
