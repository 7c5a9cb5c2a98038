package hornwright.bench.survey;

import hornwright.bench.horn.Word;

/** How a note answers, in a player's words. The limits in decibels are bench judgement: no threshold was found in print. */
public enum Symptom implements Word {
    SPEAKS("speaks", 0),
    STUFFY("stuffy", 1),
    FAILS("jumps or will not speak", 2);

    /** A resonance that lost less is not noticed, dB. */
    public static final double NOTICED = 1;

    /** One that lost more no longer holds the note, dB. */
    public static final double LOST = 3;

    private final String word;
    private final int grade;

    Symptom(String word, int grade) {
        this.word = word;
        this.grade = grade;
    }

    /** How many grades two answers lie apart. */
    public int apart(Symptom other) {
        return Math.abs(grade - other.grade);
    }

    @Override
    public String word() {
        return word;
    }

    /** How a note answers whose resonance has lost so many decibels. */
    public static Symptom of(double lostDb) {
        if (lostDb > LOST) {
            return FAILS;
        }
        return lostDb > NOTICED ? STUFFY : SPEAKS;
    }
}
