package hornwright.bench.plan;

/**
 * The numbers a place may carry. The word is the name in plan.json, the label what a person reads.
 */
public enum NumberName {
    /** Pads. */
    DIAMETER("diameter", "pad diameter"),
    CUP_INSIDE("cupInside", "cup inside diameter"),
    OVALITY("ovality", "difference of the two cup diameters"),
    FLOOR_TO_RIM("floorToRim", "cup floor to hole rim, key closed"),
    PARALLEL_GAP("parallelGap", "cup rim to hole rim, key closed"),
    THICKNESS("thickness", "thickness"),
    CHOSEN_THICKNESS("chosenThickness", "thickness taken from the shelf"),
    FLOAT("float", "adhesive left to float"),
    PROJECTION("projection", "pad face below the cup rim"),
    FRONT_GAP_IF_PROUD("frontGapIfProud", "front gap for 0.1 mm too proud"),
    BACK_GAP_IF_SHY("backGapIfShy", "back gap for 0.1 mm too shy"),
    PROUD("proud", "trial stack stands proud"),
    OVER_HOLE("overHole", "pad wider than its hole"),
    RIM_GAP("rimGap", "worst rim gap"),
    /** Closing, forecast; reckoned for its page and for plan.json. */
    GAP_LEFT("gapAtLightTouch", "gap left at a light touch"),
    LEAK_LEFT("leakAtLightTouch", "leak at a light touch, 1 kPa"),
    LEAK_HOLE("leakAsOneHole", "leak as one hole"),
    PAD_STIFFNESS("padStiffness", "stiffness of the pad's skin"),
    SEALS_WITH("sealsWith", "force on the pad that seals"),
    SEALS_AT_TOUCH("sealsAtTouch", "more at the touch to seal"),
    SPRINGS_HOLD("springsHold", "springs hold, times that"),
    /** Key fit. */
    PLAY_SHIFT("playShift", "pad shifts with the play"),
    PLAY_TILT("playTilt", "pad tilts across the hole with the play"),
    /** Heights. */
    HEIGHT_BEFORE("heightBefore", "height before strip-down"),
    HEIGHT_NOW("heightNow", "height now"),
    HEIGHT_TARGET("heightTarget", "height wanted"),
    HEIGHT_CENTRE("heightCentre", "the same at the cup centre"),
    HEIGHT_SETTLED("heightSettled", "height once the foot has settled"),
    OFF_THE_LINE("offTheLine", "off the line of its neighbours"),
    RATIO("ratio", "rise at the front edge for each mm off the foot"),
    /** Corks, felts and contacts. */
    AS_BUILT("asBuilt", "thickness as built, from packed pieces"),
    CHANGE("change", "change from what is there"),
    TURN("turn", "turns of its screw, in"),
    CUT_FULL("cutFull", "cut full at"),
    SHEET("sheet", "sheet from the shelf"),
    SAND("sand", "to sand off"),
    PULLS("pulls", "pulls of the sanding strip"),
    SETTLES("settles", "loses in the first weeks"),
    /** Springs. */
    WIRE("wire", "wire or strip"),
    LENGTH("length", "length");

    private final String word;
    private final String label;

    NumberName(String word, String label) {
        this.word = word;
        this.label = label;
    }

    public String word() {
        return word;
    }

    public String label() {
        return label;
    }
}
