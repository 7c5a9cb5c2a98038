package hornwright.bench.octave;

import hornwright.bench.horn.Clearance;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.OctaveState;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.measured.ClearanceBand;
import hornwright.bench.plan.measured.ReadNumbers;
import hornwright.bench.sheet.SheetAsked;
import hornwright.bench.sheet.SheetLine;
import hornwright.bench.sheet.Told;
import hornwright.bench.sheet.Verdict;
import hornwright.bench.survey.ReadingKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The contacts of the octave mechanism, state by state, and what to bend for all states at once. */
final class States {
    private final SheetAsked ask;
    private final ReadNumbers read;
    private final Map<String, Contact> contacts = new LinkedHashMap<>();
    private final List<SheetLine> lines = new ArrayList<>();

    States(SheetAsked ask, ReadNumbers read) {
        this.ask = ask;
        this.read = read;
        for (OctaveState state : ask.keywork().octaveStates()) {
            state.clearances().forEach(clearance -> line(state, clearance));
        }
    }

    List<SheetLine> lines() {
        return lines;
    }

    /** What to bend, the switch before the vents, the body before the neck; empty when every state is in its band. */
    List<String> order() {
        return contacts.entrySet().stream()
                .sorted(java.util.Comparator.comparingDouble(entry -> rank(entry.getKey())))
                .filter(entry -> !entry.getValue().good())
                .map(entry -> words(entry.getKey(), entry.getValue()))
                .toList();
    }

    private void line(OctaveState state, Clearance clearance) {
        String id = OctaveSheet.id(clearance.link(), state.name());
        PlannedNumber mm = ask.last(ReadingKind.CLEARANCE, clearance.link(), state.name())
                .flatMap(read::amount)
                .orElse(null);
        if (mm == null) {
            lines.add(SheetLine.untried(id));
            return;
        }
        ClearanceBand band = ClearanceBand.octave(ask.keywork(), ask.rules(), clearance);
        contacts.computeIfAbsent(clearance.link(), none -> new Contact())
                .see(new Contact.Seen(state.name(), mm.value(), band));
        boolean holds = band.holds(mm.value());
        lines.add(new SheetLine(
                id,
                holds ? Verdict.GOOD : Verdict.ACT,
                holds ? "" : wrong(band, mm.value()),
                List.of(new Told(band.touches() ? "must touch" : "free by", mm)),
                List.of()));
    }

    private static String wrong(ClearanceBand band, double mm) {
        if (band.touches()) {
            return String.format(Locale.ROOT, "does not touch: the vent opens %.2f mm of travel late", mm);
        }
        return String.format(
                Locale.ROOT,
                mm < band.fromMm() ? "too close, wanted %.2f to %.2f mm" : "too far, wanted %.2f to %.2f mm",
                band.fromMm(),
                band.toMm());
    }

    private String words(String link, Contact contact) {
        String name = OctaveSheet.name(ask.keywork(), ask.keywork().links().get(link));
        return new BendWords(
                        name,
                        "the vent opens less",
                        "the vent opens wider",
                        "Change the travel of the thumb or the switch first, then read all four states again")
                .of(contact, List.of());
    }

    /** The switch first, then the vent on the body, then the one on the neck. */
    private int rank(String link) {
        Keywork keywork = ask.keywork();
        if (ClearanceBand.opensTheNeckVent(keywork, link)) {
            return 2;
        }
        return keywork.cupOf(keywork.keys().get(keywork.links().get(link).follower()))
                        .isPresent()
                ? 1
                : 0;
    }
}
