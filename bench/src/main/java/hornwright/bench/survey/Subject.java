package hornwright.bench.survey;

/** What sort of thing a reading is taken on. */
public enum Subject {
    CUP,
    HOLE,
    KEY,
    LINK,
    PLACE,
    HORN
}
