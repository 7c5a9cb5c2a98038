package hornwright.desk.web.fits;

import hornwright.bench.archive.Bearing;
import hornwright.bench.archive.Edtf;
import hornwright.bench.archive.Evidence;
import hornwright.bench.archive.FitKind;
import hornwright.bench.archive.Fitting;
import hornwright.bench.archive.How;
import hornwright.bench.archive.Integrity;
import hornwright.bench.archive.SearchLog;
import hornwright.bench.archive.SerialRange;
import hornwright.bench.archive.Stance;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Voice;
import hornwright.desk.units.Typed;
import hornwright.desk.use.Keyworks;
import hornwright.desk.use.Shop;
import hornwright.desk.web.archive.WitnessForm;
import hornwright.desk.web.archive.WitnessRows;
import hornwright.desk.web.page.Choices;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Units;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads a claim on what fits where, as typed. Everything that is wrong is said at once. */
final class FitForm {
    private static final String DIGITS = "\\d{1,9}";
    private static final int LONGEST = 120;

    private final Context context;
    private final WitnessForm form;

    FitForm(Context context, Shop shop) {
        this.context = context;
        this.form = new WitnessForm(context, shop);
    }

    List<String> faults() {
        return form.faults();
    }

    /** Empty when anything is wrong. */
    Optional<Fitting> fitting(String id) {
        FitKind kind = Choices.of(FitKind.class, field("kind"), FitKind.PAD);
        Voice voice = Choices.of(Voice.class, field("voice"), Voice.ALTO);
        String part = field("part");
        if (part.isEmpty() || part.length() > LONGEST) {
            faults().add("Say which part it is, so that it can be looked for, like: needle spring, blued steel.");
        }
        List<String> places = places(kind, voice);
        if (places.isEmpty()) {
            faults().add("Choose where a %s goes; none of the groups chosen has such a place.".formatted(kind.word()));
        }
        @Nullable Double size = size();
        SerialRange serials = serials();
        if (field("origin").isEmpty()) {
            faults().add(
                            "Name the origin, like: horn 41630, or a catalogue. What is copied from it has the same name.");
        }
        How how = form.how(of -> of.word());
        @Nullable SearchLog log = log(how.bearing() == Bearing.NEGATIVE);
        if (!faults().isEmpty()) {
            return Optional.empty();
        }
        Evidence evidence = new Evidence(
                id,
                how.means(),
                how.hand(),
                how.bearing(),
                Choices.of(Stance.class, field("stance"), Stance.SUPPORTS),
                how.origin(),
                how.interest(),
                Integrity.ORIGINAL,
                serials,
                how.citation(),
                how.file(),
                log);
        return Optional.of(new Fitting(kind, voice, places, part, size, evidence));
    }

    private List<String> places(FitKind kind, Voice voice) {
        Optional<Keywork> keywork = Keyworks.ofVoice(voice);
        return context.formParams("places").stream()
                .flatMap(group ->
                        keywork.stream().flatMap(of -> WitnessRows.strokes(of).getOrDefault(group, List.of()).stream()))
                .filter(place -> kind.goesTo(place.kind()))
                .map(Place::id)
                .distinct()
                .toList();
    }

    private @Nullable Double size() {
        String typed = field("size");
        if (typed.isEmpty()) {
            return null;
        }
        return switch (Units.length(context, typed)) {
            case Typed.Unclear unclear -> {
                faults().add("Size: " + unclear.sentence());
                yield null;
            }
            case Typed.Amount amount -> Units.millimetres(amount);
        };
    }

    private SerialRange serials() {
        String from = field("from");
        String to = field("to").isEmpty() ? from : field("to");
        if (!from.matches(DIGITS) || !to.matches(DIGITS) || Long.parseLong(to) < Long.parseLong(from)) {
            faults().add("Serials are digits, the lower first, like 38000 and 45000; one horn is one number.");
            return SerialRange.one(0);
        }
        return new SerialRange(Long.parseLong(from), Long.parseLong(to));
    }

    /** Where somebody looked for more; nothing found says something only with it. */
    private @Nullable SearchLog log(boolean needed) {
        String where = field("where");
        String terms = field("terms");
        @Nullable Edtf when = form.date("when");
        if (where.isEmpty() && terms.isEmpty() && when == null && !needed) {
            return null;
        }
        if (where.isEmpty() || terms.isEmpty() || when == null) {
            faults().add("A search says where, for what and when somebody looked.");
            return null;
        }
        return new SearchLog(where, when, terms);
    }

    private String field(String name) {
        return Desk.field(context, name);
    }
}
