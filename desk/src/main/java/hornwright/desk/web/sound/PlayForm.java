package hornwright.desk.web.sound;

import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Keywork;
import hornwright.bench.sound.WrittenNote;
import hornwright.bench.survey.HeardBy;
import hornwright.bench.survey.PlayTest.Conditions;
import hornwright.bench.survey.PlayTest.Playing;
import hornwright.bench.survey.Stage;
import hornwright.desk.sound.HearScale;
import hornwright.desk.use.RecordPlayTest.Heard;
import hornwright.desk.web.page.Desk;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** One play test as the form brings it: a sound file, or cents typed note by note, with its conditions. */
final class PlayForm {
    private static final double MOST_CENTS = 150;
    private static final int LONGEST = 80;

    private final Context context;
    private final Keywork keywork;
    private final List<String> troubles = new ArrayList<>();

    PlayForm(Context context, Keywork keywork) {
        this.context = context;
        this.keywork = keywork;
    }

    /** What was heard, or nothing when something is not understood; then {@link #troubles} says what. */
    Optional<Heard> heard() {
        Conditions conditions = conditions();
        List<Playing> typed = typed();
        UploadedFile file = context.uploadedFile("sound");
        boolean recorded = file != null && file.size() > 0;
        List<Playing> notes = new ArrayList<>();
        List<String> leftOut = new ArrayList<>();
        if (file != null && recorded && troubles.isEmpty()) {
            listen(file, conditions, notes, leftOut);
        }
        notes.addAll(typed);
        if (notes.isEmpty() && troubles.isEmpty()) {
            troubles.add("Nothing was played: record a scale, choose a WAV file, or type at least one note.");
        }
        HeardBy by = !recorded
                ? HeardBy.TYPED
                : Desk.field(context, "by").equals("microphone") ? HeardBy.MICROPHONE : HeardBy.SOUND_FILE;
        return troubles.isEmpty()
                ? Optional.of(new Heard(conditions, by, notes, leftOut, Map.of(), stage()))
                : Optional.empty();
    }

    List<String> troubles() {
        return troubles;
    }

    /** Every field as it was typed, to be shown again. */
    Map<String, String> fields() {
        Map<String, String> fields = new HashMap<>();
        context.formParamMap()
                .forEach((name, values) -> values.stream().limit(1).forEach(value -> fields.put(name, value)));
        return fields;
    }

    private void listen(UploadedFile file, Conditions conditions, List<Playing> notes, List<String> leftOut) {
        switch (HearScale.of(bytes(file), keywork, conditions.referenceHz())) {
            case HearScale.Refused refused -> troubles.add(refused.why());
            case HearScale.Notes heard -> {
                notes.addAll(heard.scale().notes());
                leftOut.addAll(heard.scale().leftOut());
            }
        }
    }

    private static byte[] bytes(UploadedFile file) {
        try (InputStream content = file.content()) {
            return content.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<Playing> typed() {
        List<Playing> notes = new ArrayList<>();
        for (Fingering fingering : keywork.fingerings()) {
            String name = WrittenNote.shown(fingering);
            Double cents = number(SoundRows.field(fingering), name, -MOST_CENTS, MOST_CENTS, "−6");
            if (cents != null) {
                notes.add(new Playing(fingering.id(), cents, null));
            }
        }
        return notes;
    }

    private Conditions conditions() {
        Double reference = number("reference", "A4", 390, 490, "440");
        return new Conditions(
                words("mouthpiece"),
                words("reed"),
                number("insertion", "Mouthpiece on the cork", 0, 40, "17"),
                number("temperature", "Temperature", -20, 60, "21"),
                reference == null ? 440 : reference);
    }

    private String words(String field) {
        String words = Desk.field(context, field);
        return words.length() > LONGEST ? words.substring(0, LONGEST) : words;
    }

    private @Nullable Double number(String field, String name, double least, double most, String example) {
        String text = Desk.field(context, field).replace(',', '.').replace('−', '-');
        if (text.isEmpty()) {
            return null;
        }
        if (text.matches("[+-]?\\d{1,3}(\\.\\d{1,3})?")) {
            double value = Double.parseDouble(text);
            if (value >= least && value <= most) {
                return value;
            }
        }
        troubles.add("%s: \"%s\" is no number between %.0f and %.0f; write it like %s."
                .formatted(name, Desk.field(context, field), least, most, example));
        return null;
    }

    private @Nullable Stage stage() {
        String word = Desk.field(context, "stage");
        return Stream.of(Stage.values())
                .filter(stage -> stage.name().equals(word))
                .findFirst()
                .orElse(null);
    }
}
