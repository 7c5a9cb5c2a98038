package hornwright.desk.web.survey;

import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.survey.Condition;
import hornwright.bench.survey.GroupFinding;
import hornwright.desk.web.view.ElementId;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.Palette;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.Written;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Writes the survey: for each group of keys the kinds of place it has, and what was found there. */
public final class SurveyRows {
    private static final String TUBE = "body";

    private final OnBench bench;
    private final Map<String, GroupFinding> found = new LinkedHashMap<>();

    public SurveyRows(OnBench bench) {
        this.bench = bench;
        bench.job()
                .findings()
                .groups()
                .forEach(finding -> found.put(finding.group() + "." + finding.placeKind(), finding));
    }

    /** @param fault what is wrong with the stroke of that id; null when nothing is */
    public List<SurveyPage.Group> groups(@Nullable String faulty, String fault) {
        List<SurveyPage.Group> groups = new ArrayList<>();
        for (KeyGroup group : KeyGroup.values()) {
            Map<PlaceKind, Integer> kinds = kinds(Optional.of(group));
            if (!kinds.isEmpty()) {
                groups.add(group(group.word(), group.title(), kinds, faulty, fault));
            }
        }
        groups.add(group(TUBE, "Tube and neck", kinds(Optional.empty()), faulty, fault));
        return groups;
    }

    private Map<PlaceKind, Integer> kinds(Optional<KeyGroup> group) {
        Map<PlaceKind, Integer> kinds = new TreeMap<>();
        for (Place place : bench.keywork().places()) {
            if (bench.keywork().groupOf(place).equals(group)) {
                kinds.merge(place.kind(), 1, Integer::sum);
            }
        }
        return kinds;
    }

    private SurveyPage.Group group(
            String word, String title, Map<PlaceKind, Integer> kinds, @Nullable String faulty, String fault) {
        List<SurveyPage.Stroke> strokes = kinds.entrySet().stream()
                .map(entry -> stroke(word, entry.getKey(), entry.getValue(), faulty, fault))
                .toList();
        long seen = strokes.stream().filter(stroke -> !stroke.said().isEmpty()).count();
        return new SurveyPage.Group(word, title, "%d of %d looked at".formatted(seen, strokes.size()), strokes);
    }

    private SurveyPage.Stroke stroke(String group, PlaceKind kind, int count, @Nullable String faulty, String fault) {
        GroupFinding finding = found.get(group + "." + kind.word());
        String mostly = finding == null ? "" : finding.mostly();
        String id = id(group, kind);
        return new SurveyPage.Stroke(
                id,
                group,
                kind.word(),
                OnBench.capital(kind.spoken()),
                count == 1 ? "one place" : count + " places",
                finding == null ? "" : said(finding),
                Stream.concat(Palette.of(kind).stream(), mostly.isEmpty() ? Stream.of() : Stream.of(mostly))
                        .distinct()
                        .map(word -> new PlacePanel.Option(word, word, word.equals(mostly)))
                        .toList(),
                conditions(finding),
                finding == null ? "" : String.join(", ", finding.also()),
                finding == null || finding.missing() == 0 ? "" : "" + finding.missing(),
                finding == null || finding.thicknessMm() == null ? "" : Written.plain(finding.thicknessMm()),
                finding == null ? 0 : unseen(kind).size(),
                id.equals(faulty) ? fault : "");
    }

    private static List<PlacePanel.Option> conditions(@Nullable GroupFinding finding) {
        Condition state = finding == null ? Condition.UNKNOWN : finding.state();
        return Stream.of(Condition.values())
                .filter(one -> one != Condition.MISSING)
                .map(one -> new PlacePanel.Option(
                        one.name(), one == Condition.UNKNOWN ? "not said" : one.word(), one == state))
                .toList();
    }

    /** Groups that have such places, none of which anybody has looked at. */
    public List<String> unseen(PlaceKind kind) {
        Stream<Optional<KeyGroup>> all =
                Stream.concat(Stream.of(KeyGroup.values()).map(Optional::of), Stream.of(Optional.empty()));
        return all.filter(group -> kinds(group).containsKey(kind))
                .map(group -> group.map(KeyGroup::word).orElse(TUBE))
                .filter(group -> !found.containsKey(group + "." + kind.word()))
                .toList();
    }

    /** Where the stroke of that group and kind stands on the page. */
    public static String id(String group, PlaceKind kind) {
        return "stroke-" + ElementId.plain(group + "-" + kind.word());
    }

    private static String said(GroupFinding finding) {
        List<String> parts = new ArrayList<>();
        parts.add("mostly " + finding.mostly());
        if (!finding.also().isEmpty()) {
            parts.add("also " + String.join(" and ", finding.also()));
        }
        if (finding.state() != Condition.UNKNOWN) {
            parts.add(finding.state().word());
        }
        if (finding.missing() > 0) {
            parts.add(finding.missing() + " missing");
        }
        if (finding.thicknessMm() != null) {
            parts.add(Written.plain(finding.thicknessMm()) + " mm");
        }
        return String.join(", ", parts);
    }
}
