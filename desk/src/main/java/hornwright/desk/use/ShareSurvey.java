package hornwright.desk.use;

import hornwright.bench.job.Job;
import hornwright.desk.bag.Bag;
import hornwright.desk.journal.EditJson;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** Packs what was looked at and measured on one horn: no owner, no complaint, no note, no decision, no work and no player. */
public record ShareSurvey(Shop shop) {
    static final String SURVEY = "survey.json";

    /** @param originals whether the cameras' own files leave as well, with all they tell */
    public byte[] pack(String jobId, boolean originals) {
        Job job = shop.jobNow(jobId).surveyOnly().withoutOriginals();
        ShareArchive archive = new ShareArchive(shop);
        TreeMap<String, byte[]> files = new TreeMap<>();
        SharedSurvey shared =
                new SharedSurvey(SharedSurvey.FORMAT, SharedSurvey.VERSION, archive.sender(), archive.name(), job);
        files.put(
                SURVEY, text(EditJson.mapper().writerWithDefaultPrettyPrinter().writeValueAsString(shared)));
        files.put(JobFolder.READINGS, text(JobTables.readings(job).toString()));
        files.put(JobFolder.FINDINGS, text(JobTables.findings(job).toString()));
        files.put(JobFolder.READ_ME, text(readMe(job)));
        KeepFile kept = new KeepFile(shop);
        Originals raw = new Originals(shop);
        JobFolder.pictures(job).keySet().forEach(name -> {
            kept.read(name).ifPresent(bytes -> files.put(SharedPhotos.FOLDER + name + ".jpg", bytes));
            if (originals) {
                raw.of(name).ifPresent(one -> files.put(Originals.FOLDER + name + one.ending(), one.bytes()));
            }
        });
        return new Bag(
                        Map.of(
                                "Source-Organization",
                                archive.name(),
                                "External-Description",
                                "What was looked at and measured on " + job.title(),
                                "External-Identifier",
                                archive.sender() + ":" + jobId),
                        files)
                .zip("survey");
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String readMe(Job job) {
        return """
            %s: what one shop looked at and measured.

            findings.csv    what was on the horn, place by place and by groups of keys
            readings.csv    every measurement: value, unit and u, one standard uncertainty
            photos          the pictures, by the SHA-256 of their bytes; written anew without place or camera
            originals       only where its sender said so: the camera's own files, which may tell place, time and camera
            survey.json     all of it; another shop takes it in as a horn of its own shelf

            No owner, complaint, note, decision or price is in here.
            The folder is a BagIt bag (RFC 8493): 'sha512sum -c manifest-sha512.txt' checks every file.
            """.formatted(job.title());
    }
}
