package hornwright.desk.use;

import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.job.MaterialsFound;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.GroupFinding;
import hornwright.desk.json.Faults;
import java.util.Arrays;
import java.util.List;

/** Writes down what is on the horn: one stroke of the brush over as many places and groups as were looked at. */
public record RecordFindings(Shop shop) {
    public Saved record(String jobId, Form form, List<Finding> places, List<GroupFinding> groups) {
        check(Keyworks.of(shop.jobNow(jobId)), places, groups);
        return shop.saveJob(jobId, form, new MaterialsFound(places, groups));
    }

    private static void check(Keywork keywork, List<Finding> places, List<GroupFinding> groups) {
        Faults faults = new Faults();
        if (places.isEmpty() && groups.isEmpty()) {
            faults.add("", "no place and no group is named", "\"places\": [ { … } ]");
        }
        for (int i = 0; i < places.size(); i++) {
            if (!keywork.places().contains(places.get(i).place())) {
                faults.add(
                        "/places/" + i + "/place",
                        "this horn has no place \"" + places.get(i).place() + "\"",
                        "\"" + keywork.places().list().getFirst().id() + "\"");
            }
        }
        for (int i = 0; i < groups.size(); i++) {
            check(faults, "/groups/" + i, groups.get(i));
        }
        faults.refuseIfAny();
    }

    private static void check(Faults faults, String at, GroupFinding finding) {
        if (Arrays.stream(KeyGroup.values()).noneMatch(group -> group.word().equals(finding.group()))
                && !finding.group().equals("body")) {
            faults.add(at + "/group", "there is no group of keys \"" + finding.group() + "\"", "\"lower-stack\"");
        }
        if (Arrays.stream(PlaceKind.values()).noneMatch(kind -> kind.word().equals(finding.placeKind()))) {
            faults.add(at + "/placeKind", "there is no kind of place \"" + finding.placeKind() + "\"", "\"foot\"");
        }
    }
}
