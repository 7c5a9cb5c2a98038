package hornwright.bench.octave;

import hornwright.bench.horn.Clearance;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.TableClearance;
import hornwright.bench.horn.Touch;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
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
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** The clearances of the low table, at rest and down, and the lost motion they make under the finger. */
final class Table {
    private final SheetAsked ask;
    private final Reasons reasons;
    private final ReadNumbers read;
    private final Map<String, Contact> contacts = new LinkedHashMap<>();

    Table(SheetAsked ask, Reasons reasons, ReadNumbers read) {
        this.ask = ask;
        this.reasons = reasons;
        this.read = read;
    }

    List<SheetLine> lines() {
        List<SheetLine> lines = new ArrayList<>();
        var table = ask.keywork().lowTable();
        for (Clearance tab : table.gSharpTabs()) {
            lines.add(line(
                    tab.link(),
                    OctaveSheet.AT_REST,
                    "too close: G♯ is let go all the time and may leak",
                    "too far: the finger moves before G♯ does"));
        }
        for (TableClearance hold : table.cSharpHoldDown()) {
            lines.add(line(
                    hold.link(),
                    OctaveSheet.DOWN,
                    "",
                    "low C♯ is not held shut while this key is down: the low notes leak there"));
        }
        for (TableClearance over : table.bFlatOverB()) {
            lines.add(line(over.link(), OctaveSheet.AT_REST, "", "too far: the finger moves before low B does"));
            lines.add(line(over.link(), OctaveSheet.DOWN, "", "low B♭ does not take low B down with it"));
        }
        return lines;
    }

    /**
     * What to bend, once the lines are read: what holds low C♯ shut first, then low B♭ over low B, the tabs on the G♯ lever
     * last, since the first two settle how far their touches travel (bench judgement).
     */
    List<String> order() {
        var table = ask.keywork().lowTable();
        Stream<String> links = Stream.of(
                        table.cSharpHoldDown().stream().map(TableClearance::link),
                        table.bFlatOverB().stream().map(TableClearance::link),
                        table.gSharpTabs().stream().map(Clearance::link))
                .flatMap(part -> part);
        return links.distinct()
                .filter(link -> contacts.containsKey(link) && !at(link).good())
                .map(this::words)
                .toList();
    }

    private String words(String link) {
        Link bent = ask.keywork().links().get(link);
        List<String> again = contacts.keySet().stream()
                .map(ask.keywork().links()::get)
                .filter(other ->
                        other.driver().equals(bent.driver()) && !other.id().equals(link))
                .map(other -> OctaveSheet.name(ask.keywork(), other))
                .toList();
        return new BendWords(
                        OctaveSheet.name(ask.keywork(), bent),
                        "it takes hold later",
                        "it takes hold sooner",
                        "Change how far the touch travels first, then read both states again")
                .of(at(link), again);
    }

    private Contact at(String link) {
        return Objects.requireNonNull(contacts.get(link));
    }

    /** Lost motion as felt at each touch that has some. */
    List<SheetLine> lostMotion() {
        return OctaveSheet.touches(ask.keywork()).stream().map(this::lost).toList();
    }

    private SheetLine line(String link, String point, String close, String far) {
        String id = OctaveSheet.id(link, point);
        Optional<PlannedNumber> mm =
                ask.last(ReadingKind.CLEARANCE, link, point).flatMap(read::amount);
        if (mm.isEmpty()) {
            return SheetLine.untried(id);
        }
        double value = mm.get().value();
        ClearanceBand band = ClearanceBand.of(ask.keywork(), ask.rules(), link, point)
                .orElseThrow(() -> new IllegalStateException(link + " is no contact of the low table"));
        contacts.computeIfAbsent(link, none -> new Contact()).see(new Contact.Seen(point, value, band));
        List<Told> numbers = new ArrayList<>();
        numbers.add(new Told(band.touches() ? "must touch" : "clearance", mm.get()));
        if (!band.touches()) {
            fingertip(ask.keywork().links().get(link), mm.get())
                    .ifPresent(tip -> numbers.add(new Told("at the fingertip", tip)));
        }
        String says = band.holds(value) ? "" : value < band.fromMm() ? close : far;
        return new SheetLine(id, says.isEmpty() ? Verdict.GOOD : Verdict.ACT, says, numbers, List.of());
    }

    /** The gap seen from the finger: as much longer as its arm is. */
    private Optional<PlannedNumber> fingertip(Link link, PlannedNumber gap) {
        Touch touch = ask.keywork().keys().get(link.driver()).touch();
        if (touch == null) {
            return Optional.empty();
        }
        return Optional.of(reasons.derive(
                "table." + link.id() + "/fingertip",
                "clearance x arm of the touch %.0f mm / arm of the contact %.1f mm, by pattern"
                        .formatted(touch.armMm(), link.driverArmMm()),
                "mm",
                in -> in[0] * touch.armMm() / link.driverArmMm(),
                Because.Input.of("clearance", gap)));
    }

    private SheetLine lost(Key key) {
        Optional<PlannedNumber> mm = ask.last(ReadingKind.LOST_MOTION, key.id(), OctaveSheet.FINGERTIP)
                .flatMap(read::amount);
        if (mm.isEmpty()) {
            return SheetLine.untried(key.id());
        }
        double value = mm.get().value();
        Verdict verdict = value >= ask.rules().value("touch.lost-felt_mm")
                ? Verdict.ACT
                : value > ask.rules().value("touch.lost-accept_mm") ? Verdict.MAY_STAY : Verdict.GOOD;
        String says = verdict == Verdict.ACT ? "felt by every player: take it up at the contact, not at the foot" : "";
        return new SheetLine(key.id(), verdict, says, List.of(new Told("lost motion", mm.get())), List.of());
    }
}
