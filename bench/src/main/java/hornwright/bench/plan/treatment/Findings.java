package hornwright.bench.plan.treatment;

import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.plan.Found;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.GroupFinding;
import hornwright.bench.survey.Originality;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What was found, by place: a finding at the place itself outranks one stroke over its group. */
public final class Findings {
    private record Brush(String group, String kind) {}

    private final Keywork keywork;
    private final Map<String, Finding> atPlace = new HashMap<>();
    private final Map<Brush, GroupFinding> byGroup = new HashMap<>();

    public Findings(Keywork keywork, List<Finding> findings, List<GroupFinding> groups) {
        this.keywork = keywork;
        findings.forEach(finding -> atPlace.put(finding.place(), finding));
        groups.forEach(group -> byGroup.put(new Brush(group.group(), group.placeKind()), group));
    }

    public Optional<Finding> at(String place) {
        return Optional.ofNullable(atPlace.get(place));
    }

    /** The stroke of the brush that covers a place; adhesive under corks was not looked at with that of the pads. */
    public Optional<GroupFinding> over(Place place) {
        if (place.beneath() != null) {
            return Optional.empty();
        }
        return keywork.groupOf(place)
                .flatMap(group -> Optional.ofNullable(
                        byGroup.get(new Brush(group.word(), place.kind().word()))));
    }

    @Nullable
    public Found found(Place place) {
        return at(place.id())
                .map(Findings::itself)
                .or(() -> over(place).map(Findings::stroke))
                .orElse(null);
    }

    private static Found itself(Finding finding) {
        return new Found(
                finding.material(),
                finding.thicknessMm(),
                finding.colour(),
                finding.condition(),
                finding.originality(),
                false);
    }

    private static Found stroke(GroupFinding group) {
        return new Found(group.mostly(), group.thicknessMm(), null, group.state(), Originality.UNKNOWN, true);
    }
}
