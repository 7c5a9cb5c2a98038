package hornwright.bench.sound;

import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.TradeName;
import hornwright.engines.pitch.Temperament;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A note by its written name, such as Bb3, counted in semitones with the written A4 as 69.
 *
 * @param semitone where it is written, not where it sounds
 */
public record WrittenNote(int semitone) {
    private static final Pattern SHAPE = Pattern.compile("([A-G])([#b]?)(\\d)");
    private static final List<Integer> LETTERS = List.of(9, 11, 0, 2, 4, 5, 7);

    public static WrittenNote of(String name) {
        Matcher shape = SHAPE.matcher(name);
        if (!shape.matches()) {
            throw new IllegalArgumentException("a note is written like Bb3, not " + name);
        }
        int letter = LETTERS.get(shape.group(1).charAt(0) - 'A');
        int sign = shape.group(2).isEmpty() ? 0 : shape.group(2).equals("#") ? 1 : -1;
        return new WrittenNote(12 * (Integer.parseInt(shape.group(3)) + 1) + letter + sign);
    }

    /** The semitone a fingering sounds at, A4 of the concert as 69. */
    public static int concert(Keywork keywork, Fingering fingering) {
        return of(fingering.written()).semitone() + keywork.voice().writtenToConcertSemitones();
    }

    /** Where a fingering belongs in equal temperament, Hz. */
    public static double place(Keywork keywork, Fingering fingering, double referenceHz) {
        return new Temperament(referenceHz).frequency(concert(keywork, fingering));
    }

    /** "E♭5", with the way it is fingered when that is not the usual one: "B♭4, bis". */
    public static String shown(Fingering fingering) {
        Matcher shape = SHAPE.matcher(fingering.written());
        String name = shape.matches()
                ? shape.group(1) + shape.group(2).replace("b", "♭").replace("#", "♯") + shape.group(3)
                : fingering.written();
        return fingering.label().equals("standard") ? name : name + ", " + TradeName.withSigns(fingering.label());
    }
}
