package hornwright.desk.use;

import hornwright.bench.plan.Plan;
import hornwright.bench.plan.Planner;
import hornwright.bench.plan.regulation.LinksAnswer;
import hornwright.bench.plan.regulation.RegulationChapter;
import hornwright.bench.plan.seat.SeatAnswer;
import hornwright.bench.plan.seat.SeatChapter;
import hornwright.bench.plan.seat.SeatNumbers;
import hornwright.bench.plan.seat.SeatQuestion;
import hornwright.desk.jobfile.JobFile;
import hornwright.desk.jobfile.JobRequest;
import hornwright.desk.jobfile.PlanJson;
import hornwright.desk.jobfile.PlanLists;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Plans the horn of a job file and makes the files of its plan, all in memory: nothing is written here, so a fault leaves
 * nothing behind.
 *
 * @param engineVersion of this program, kept in plan.json
 * @param sheets what is printed beside the lists, in order
 */
public record PlanJob(String engineVersion, List<Sheet> sheets) {
    /** One printed sheet. */
    public interface Sheet {
        /** Its file name: "bench-sheet.pdf". */
        String fileName();

        byte[] of(JobRequest job, Plan plan);
    }

    public PlanJob {
        sheets = List.copyOf(sheets);
    }

    /** File names to contents. */
    public Map<String, byte[]> files(String jobText) {
        JobRequest job = JobFile.read(jobText);
        Plan plan = whole(job);
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("plan.json", bytes(PlanJson.write(job, plan, engineVersion) + "\n"));
        files.put("order-list.csv", bytes(PlanLists.orders(plan)));
        files.put("prep-list.csv", bytes(PlanLists.prep(job.inputs().keywork(), plan)));
        sheets.forEach(sheet -> files.put(sheet.fileName(), sheet.of(job, plan)));
        return files;
    }

    /** The plan with how each pad should close and what to do at the contacts between keys. */
    public static Plan whole(JobRequest job) {
        LinksAnswer links = RegulationChapter.of(RegulationChapter.Question.of(job.inputs()));
        return closing(job, Planner.plan(job.inputs())).withLinks(links.contacts(), links.becauses());
    }

    private static Plan closing(JobRequest job, Plan plan) {
        Map<String, String> placeByCup = new LinkedHashMap<>();
        job.inputs().keywork().cups().forEach(cup -> placeByCup.put(cup.id(), "pad." + cup.hole()));
        List<SeatAnswer> pads = SeatQuestion.all(job.inputs()).stream()
                .flatMap(ask -> SeatChapter.of(ask).stream())
                .toList();
        return plan.with(SeatNumbers.whole(pads, placeByCup));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
