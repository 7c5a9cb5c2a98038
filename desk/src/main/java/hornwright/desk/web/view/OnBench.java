package hornwright.desk.web.view;

import hornwright.bench.body.Pictured;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.job.History;
import hornwright.bench.job.Job;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.PlannedPlace;
import hornwright.bench.survey.Shot;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** One horn as a page sees it: the job with its edits, its keywork and the plan made from them. */
public record OnBench(History<Optional<Job>> history, Job job, Keywork keywork, Plan plan) {
    private static final Set<NumberName> OPENING = EnumSet.of(
            NumberName.HEIGHT_BEFORE,
            NumberName.HEIGHT_NOW,
            NumberName.HEIGHT_TARGET,
            NumberName.HEIGHT_CENTRE,
            NumberName.HEIGHT_SETTLED,
            NumberName.OFF_THE_LINE,
            NumberName.CHANGE,
            NumberName.RATIO);

    public String id() {
        return job.id();
    }

    /** "Tarrant & Loe alto 41207". */
    public String name() {
        return (job.identity().maker() + " " + job.identity().inWords()).strip();
    }

    public String address(String page) {
        return "/horn/" + id() + (page.isEmpty() ? "" : "/" + page);
    }

    public String placeAddress(String place) {
        return address("") + "?place=" + place;
    }

    /** Where what a photograph was taken of is to be seen: its place, its pin, or the sheet it is written on. */
    public String picturedAddress(String subject) {
        if (keywork.places().contains(subject)) {
            return placeAddress(subject);
        }
        return Pictured.isOfTheFinish(subject)
                ? address("finish") + "#" + ElementId.row(subject)
                : address("body") + "#" + ElementId.row(subject);
    }

    /** How what a photograph was taken of is called. */
    public String pictured(String subject) {
        return capital(Pictured.name(keywork, job.readings().current(), subject).orElse(subject));
    }

    /** Why a reading counts no longer, as it stands beside its value; empty while it does. */
    public String lapsed(String reading) {
        return plan.stale().stream()
                .filter(stale -> stale.reading().equals(reading))
                .findFirst()
                .map(stale -> "counts no longer: " + stale.why())
                .orElse("");
    }

    /** The pad of a cup, or nothing when the keywork lists none. */
    public Optional<Place> padOf(Cup cup) {
        return keywork.placesOf(cup).stream()
                .filter(place -> place.kind() == PlaceKind.PAD)
                .findFirst();
    }

    /** A number the plan has for a cup: at its pad, or for how far it opens at the foot of its key. */
    public Optional<PlannedNumber> numberOf(Cup cup, NumberName name) {
        Stream<Place> ofKey = keywork.placesOf(new Owner.OfKey(cup.key())).stream();
        return Stream.concat(padOf(cup).stream(), OPENING.contains(name) ? ofKey : Stream.empty())
                .flatMap(place -> plan.number(place.id(), name).stream())
                .findFirst();
    }

    public Optional<PlannedPlace> planned(Place place) {
        return plan.places().find(place.id());
    }

    /** "Low B♭", as a heading begins. */
    public String heading(Cup cup) {
        return capital(keywork.nameOf(cup).display());
    }

    public static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }

    public List<Place> places(PlaceKind kind) {
        return keywork.places().where(place -> place.kind() == kind);
    }

    /** How far the list of photographs is. */
    public String shotsTaken() {
        long taken =
                Stream.of(Shot.values()).filter(shot -> job().isTaken(shot)).count();
        return "%d of %d taken".formatted(taken, Shot.values().length);
    }
}
