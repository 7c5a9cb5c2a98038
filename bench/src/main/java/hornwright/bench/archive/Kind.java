package hornwright.bench.archive;

import hornwright.bench.horn.Word;

/** Where evidence comes from. The kind belongs to the origin, so a copy cannot change it. */
public enum Kind implements Word {
    OBJECT("horn examined"),
    DOCUMENT("paper of the time"),
    PHOTO("photograph"),
    TESTIMONY("testimony"),
    LITERATURE("later literature"),
    HEARSAY("hearsay");

    private final String word;

    Kind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
