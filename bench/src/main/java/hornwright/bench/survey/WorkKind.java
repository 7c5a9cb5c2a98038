package hornwright.bench.survey;

import hornwright.bench.horn.Word;

/** Bench work that changes what was measured. */
public enum WorkKind implements Word {
    ARM_BENT("arm bent"),
    CUP_LEVELLED("cup levelled"),
    HOLE_LEVELLED("hole levelled"),
    KEY_FITTED("key fitted"),
    FOOT_CHANGED("foot changed"),
    LINK_CHANGED("link changed"),
    PAD_FITTED("pad fitted"),
    SPRING_CHANGED("spring changed"),
    SIGNED_OFF("signed off"),
    /** Looked at again after something beneath it changed, and nothing had to be done. */
    FOUND_RIGHT("found right");

    private final String word;

    WorkKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
