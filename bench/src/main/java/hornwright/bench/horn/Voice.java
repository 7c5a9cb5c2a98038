package hornwright.bench.horn;

/** The size of saxophone, with the distance from the written to the sounding note. */
public enum Voice implements Word {
    SOPRANO("soprano", -2),
    ALTO("alto", -9),
    TENOR("tenor", -14),
    BARITONE("baritone", -21);

    private final String word;
    private final int writtenToConcertSemitones;

    Voice(String word, int writtenToConcertSemitones) {
        this.word = word;
        this.writtenToConcertSemitones = writtenToConcertSemitones;
    }

    @Override
    public String word() {
        return word;
    }

    public int writtenToConcertSemitones() {
        return writtenToConcertSemitones;
    }
}
