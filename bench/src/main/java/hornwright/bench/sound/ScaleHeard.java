package hornwright.bench.sound;

import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Keywork;
import hornwright.bench.survey.PlayTest.Playing;
import hornwright.engines.pitch.Note;
import hornwright.engines.pitch.Temperament;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The notes of a recording as notes of this horn. What all of them share is taken off before a note is named, so a horn
 * played 40 cents flat is not heard a semitone low; more than half a semitone off cannot be told from the neighbour. Of
 * several fingerings the usual one is taken.
 *
 * @param notes in the order they were played
 * @param leftOut a sentence for each note that was not taken
 */
public record ScaleHeard(List<Playing> notes, List<String> leftOut) {
    public ScaleHeard {
        notes = List.copyOf(notes);
        leftOut = List.copyOf(leftOut);
    }

    public static ScaleHeard of(Keywork keywork, List<Note> heard, double referenceHz) {
        Map<Integer, Fingering> fingerings = bySemitone(keywork);
        Temperament temperament = new Temperament(referenceHz);
        double shared = shared(heard, temperament);
        List<Playing> notes = new ArrayList<>();
        List<String> leftOut = new ArrayList<>();
        for (Note note : heard) {
            int semitone = temperament.nearest(note.frequency() * Math.pow(2, -shared / 1200));
            Fingering fingering = fingerings.get(semitone);
            if (fingering == null) {
                leftOut.add(
                        "%s at %.1f s is no note of this horn".formatted(Temperament.name(semitone), note.startS()));
            } else if (!note.steady()) {
                leftOut.add("%s at %.1f s wavered by %.0f cents"
                        .formatted(WrittenNote.shown(fingering), note.startS(), note.spreadCents()));
            } else {
                double cents = Temperament.cents(note.frequency(), temperament.frequency(semitone));
                notes.add(new Playing(fingering.id(), cents, note.spreadCents()));
            }
        }
        return new ScaleHeard(notes, leftOut);
    }

    private static Map<Integer, Fingering> bySemitone(Keywork keywork) {
        Map<Integer, Fingering> all = new LinkedHashMap<>();
        for (Fingering fingering : keywork.fingerings()) {
            int semitone = WrittenNote.concert(keywork, fingering);
            Fingering before = all.get(semitone);
            if (before == null || (isUsual(fingering) && !isUsual(before))) {
                all.put(semitone, fingering);
            }
        }
        return all;
    }

    private static boolean isUsual(Fingering fingering) {
        return fingering.label().equals("standard");
    }

    /** Mean distance from the semitones, on a circle of 100 cents. */
    private static double shared(List<Note> heard, Temperament temperament) {
        double along = 0;
        double across = 0;
        for (Note note : heard) {
            double turn = 2 * Math.PI * temperament.cents(note.frequency()) / 100;
            along += Math.cos(turn);
            across += Math.sin(turn);
        }
        return 100 * Math.atan2(across, along) / (2 * Math.PI);
    }
}
