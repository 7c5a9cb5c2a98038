package hornwright.desk.use;

import hornwright.bench.job.Job;
import hornwright.desk.journal.Blob;
import hornwright.desk.journal.EditJson;
import hornwright.desk.json.BadInput;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.json.JsonMapper;

/** Writes a job as a folder anybody can read without this program: tables, plain text, pictures, and one file with all. */
public record ExportJob(Shop shop) {
    /** @param folder must not exist yet */
    public void to(String jobId, Path folder) {
        ShowJob.View view = new ShowJob(shop).show(jobId);
        if (Files.exists(folder)) {
            throw new BadInput("", folder + " is there already", "a folder that does not exist yet");
        }
        try {
            Files.createDirectories(folder.resolve(JobFolder.PHOTOS));
            for (Map.Entry<String, Table> table :
                    JobTables.of(view.job(), new ShowHistory(shop).ofJob(jobId)).entrySet()) {
                Files.writeString(
                        folder.resolve(table.getKey()), table.getValue().toString());
            }
            pictures(view.job(), folder.resolve(JobFolder.PHOTOS));
            Files.writeString(folder.resolve(JobFolder.KEYWORK), KeyworkFile.write(view.keywork()));
            Files.writeString(folder.resolve(JobFolder.READ_ME), readMe(view));
            json(folder.resolve(JobFolder.JOB), view.job().withoutOriginals());
            if (view.owner().isPresent()) {
                json(folder.resolve(JobFolder.OWNER), view.owner().get());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write " + folder, e);
        }
    }

    private String readMe(ShowJob.View view) {
        String name = shop.house().state().name();
        return """
            %s

            Everything the shop %s knows of this horn, written %s.

            readings.csv    every measurement: value, unit and u, one standard uncertainty
            findings.csv    what was on the horn, place by place and by groups of keys
            decisions.csv   what was settled and why
            work.csv        what was done, in order
            notes.csv       notes and the photographs that were taken
            play-tests.csv  every note that was played, how far from its place, and under which conditions
            history.csv     every change in the order it was made
            photos          the pictures
            keywork.json    the instrument itself: keys, cups, holes and places; lengths in millimetres, at_mm from the small
                            end of the neck, angle_deg 0 at the front and positive to the player's right
            job.json        all of it in one file, which 'hornwright import' reads back
            owner.json      whose horn it is; leave it out when the folder goes to somebody else

            The tables open in any spreadsheet: commas between, decimal points, UTF-8. Places are named as in keywork.json.
            """.formatted(
                view.job().title(),
                name.isEmpty() ? "without a name" : name,
                shop.job(view.job().id()).edits().getLast().at().toString().substring(0, 10));
    }

    private void pictures(Job job, Path folder) throws IOException {
        KeepFile files = new KeepFile(shop);
        for (Map.Entry<String, String> picture : JobFolder.pictures(job).entrySet()) {
            Optional<Blob> blob = files.find(picture.getKey());
            Optional<byte[]> bytes = files.read(picture.getKey());
            if (blob.isPresent() && bytes.isPresent()) {
                String name = JobFolder.pictureName(
                        picture.getKey(), picture.getValue(), blob.get().media());
                Files.write(folder.resolve(name), bytes.get());
            }
        }
    }

    private static void json(Path file, Object value) throws IOException {
        JsonMapper mapper = EditJson.mapper();
        Files.writeString(file, mapper.writerWithDefaultPrettyPrinter().writeValueAsString(value) + "\n");
    }
}
