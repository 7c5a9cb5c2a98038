package hornwright.bench.job;

import hornwright.bench.survey.Finding;
import hornwright.bench.survey.GroupFinding;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is on the horn now: by place, and by whole groups of keys where only that was looked at.
 *
 * @param byPlace place id to finding
 * @param byGroup {@link #brush} of a group finding to it
 */
public record Findings(Map<String, Finding> byPlace, Map<String, GroupFinding> byGroup) {
    public static final Findings NONE = new Findings(Map.of(), Map.of());

    public Findings {
        byPlace = Collections.unmodifiableMap(new LinkedHashMap<>(byPlace));
        byGroup = Collections.unmodifiableMap(new LinkedHashMap<>(byGroup));
    }

    public List<Finding> places() {
        return List.copyOf(byPlace.values());
    }

    public List<GroupFinding> groups() {
        return List.copyOf(byGroup.values());
    }

    /** What a group finding paints: {@code bell.pad}. */
    static String brush(GroupFinding finding) {
        return finding.group() + "." + finding.placeKind();
    }

    Findings with(Collection<Finding> places, Collection<GroupFinding> groups) {
        Map<String, Finding> painted = new LinkedHashMap<>(byPlace);
        places.forEach(finding -> painted.put(finding.place(), finding));
        Map<String, GroupFinding> brushed = new LinkedHashMap<>(byGroup);
        groups.forEach(finding -> brushed.put(brush(finding), finding));
        return new Findings(painted, brushed);
    }
}
