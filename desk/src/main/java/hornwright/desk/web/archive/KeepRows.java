package hornwright.desk.web.archive;

import hornwright.bench.archive.Grade;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.plan.Built;
import hornwright.bench.plan.Found;
import hornwright.bench.plan.PlannedPlace;
import hornwright.bench.plan.Warning;
import hornwright.bench.plan.origin.LaterUse;
import hornwright.bench.survey.Condition;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Originality;
import hornwright.bench.survey.Treatment;
import hornwright.desk.web.view.GradeState;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.State;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Writes what stays and what goes. */
public final class KeepRows {
    /** What asks for a person first, then from the least intrusive to the most. */
    private static final List<Treatment> ORDER = List.of(
            Treatment.DECIDE,
            Treatment.REPLACE_LIKE,
            Treatment.SUBSTITUTE,
            Treatment.MAKE,
            Treatment.REFIT,
            Treatment.CLEAN,
            Treatment.KEEP);

    private final OnBench bench;

    private record Alike(
            PlaceKind kind,
            String found,
            String built,
            @Nullable Grade grade,
            Treatment treatment,
            String why,
            boolean decided,
            String note) {}

    public KeepRows(OnBench bench) {
        this.bench = bench;
    }

    public String lead() {
        long decided = bench.job().decisions().values().stream()
                .filter(one -> one instanceof Decision.Treat)
                .count();
        return "From what is original, how it is, and what the horn is for. The proposals are the program's, the decisions yours; %s."
                .formatted(decided == 0 ? "none is made yet" : decided + " are made");
    }

    public List<KeepPage.Set> sets() {
        return bench.plan().warnings().stream()
                .filter(warning -> warning.sort() == Warning.Sort.LINKED_SET)
                .map(warning -> new KeepPage.Set(OnBench.capital(warning.words()), String.join(",", warning.about())))
                .toList();
    }

    public static List<PlacePanel.Option> treatments() {
        return Stream.of(Treatment.values())
                .filter(one -> one != Treatment.DECIDE)
                .map(one -> new PlacePanel.Option(
                        one.name(), one.word() + ", undone: " + one.reversible().word(), false))
                .toList();
    }

    public List<KeepPage.Part> parts() {
        Map<Alike, List<Place>> alike = new LinkedHashMap<>();
        for (Place place : bench.keywork().places()) {
            bench.planned(place)
                    .ifPresent(planned -> alike.computeIfAbsent(alike(place, planned), none -> new ArrayList<>())
                            .add(place));
        }
        return ORDER.stream()
                .map(treatment -> part(treatment, alike))
                .filter(part -> !part.lines().isEmpty())
                .toList();
    }

    private Alike alike(Place place, PlannedPlace planned) {
        Found found = planned.found();
        boolean decided = bench.job().decisions().containsKey("treat." + place.id());
        String why = planned.why().startsWith("goes with")
                ? planned.why().replaceAll("goes with \\S+", "goes with its pad or cork")
                : planned.why();
        return new Alike(
                place.kind(),
                found(found),
                built(planned.asBuilt()),
                planned.asBuilt().grade(),
                planned.treatment(),
                why,
                decided,
                found == null || found.material() == null || found.originality() == Originality.ORIGINAL
                        ? ""
                        : LaterUse.note(found.material()).orElse(""));
    }

    private static String found(@Nullable Found found) {
        if (found == null) {
            return "nobody has looked";
        }
        return Stream.of(
                        Objects.requireNonNullElse(found.material(), "nothing"),
                        found.condition() == Condition.UNKNOWN
                                ? ""
                                : found.condition().word(),
                        found.originality() == Originality.UNKNOWN
                                ? ""
                                : found.originality().word(),
                        found.byGroup() ? "by its group" : "")
                .filter(word -> !word.isEmpty())
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private static String built(Built built) {
        return built.material() == null ? "not known" : built.material();
    }

    private static KeepPage.Part part(Treatment treatment, Map<Alike, List<Place>> alike) {
        List<KeepPage.Line> lines = new ArrayList<>();
        int places = 0;
        for (Map.Entry<Alike, List<Place>> one : alike.entrySet()) {
            if (one.getKey().treatment() == treatment) {
                lines.add(line(treatment.name().toLowerCase(Locale.ROOT) + "-" + lines.size(), one));
                places += one.getValue().size();
            }
        }
        boolean open = treatment == Treatment.DECIDE || treatment == Treatment.REPLACE_LIKE;
        return new KeepPage.Part(
                treatment.name().toLowerCase(Locale.ROOT),
                OnBench.capital(treatment.word()),
                places + (places == 1 ? " place" : " places"),
                open,
                lines);
    }

    private static KeepPage.Line line(String id, Map.Entry<Alike, List<Place>> one) {
        Alike alike = one.getKey();
        List<Place> places = one.getValue();
        return new KeepPage.Line(
                id,
                places.size() == 1
                        ? OnBench.capital(places.getFirst().display())
                        : places.size() + " × " + alike.kind().spoken(),
                alike.found(),
                alike.built(),
                alike.grade() == null ? new State("missing", "pattern only") : GradeState.of(alike.grade()),
                OnBench.capital(alike.why()) + ".",
                alike.note(),
                alike.treatment().reversible().word(),
                alike.decided(),
                places.stream()
                        .map(place -> new PlacePanel.Option(place.id(), place.display(), true))
                        .toList());
    }
}
