package hornwright.bench.job;

import hornwright.bench.survey.Finding;
import hornwright.bench.survey.GroupFinding;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What is on the horn, entered in one stroke over as many places as were looked at. */
@Kind(word = "materials-found", version = 2)
public record MaterialsFound(List<Finding> places, List<GroupFinding> groups) implements JobEdit {
    public MaterialsFound {
        places = List.copyOf(places);
        groups = List.copyOf(groups);
    }

    @Override
    public Fields fields() {
        Set<String> names = new LinkedHashSet<>();
        places.forEach(finding -> names.add("finding." + finding.place()));
        groups.forEach(finding -> names.add("group." + Findings.brush(finding)));
        return new Fields(names, false);
    }

    @Override
    public String inWords() {
        if (groups.isEmpty() && places.size() == 1) {
            Finding only = places.getFirst();
            return "%s: %s, %s"
                    .formatted(
                            only.place(),
                            only.material() == null ? "nothing" : only.material(),
                            only.condition().word());
        }
        return "found at %d places and in %d groups".formatted(places.size(), groups.size());
    }
}
