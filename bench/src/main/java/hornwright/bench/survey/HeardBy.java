package hornwright.bench.survey;

import hornwright.bench.horn.Word;

/** How the notes of a play test came in. */
public enum HeardBy implements Word {
    TYPED("typed"),
    SOUND_FILE("sound file"),
    MICROPHONE("microphone");

    private final String word;

    HeardBy(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
