package hornwright.desk.journal;

import hornwright.bench.job.NoteWritten;
import hornwright.bench.job.PhotoTicked;
import hornwright.bench.job.StreamName;
import hornwright.desk.journal.Journal.Alongside;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;

/**
 * A program of its own that writes as fast as it can and says on its standard output what it was told is kept: the seq of
 * the last edit and the name of the picture that edit speaks of. It never ends by itself.
 */
public final class WriterUntilKilled {
    static final StreamName JOB = StreamName.ofJob("q-0001");

    private WriterUntilKilled() {}

    public static void main(String[] where) {
        ShopData data = where[0].startsWith("jdbc:")
                ? ShopData.open(where[0], Clock.systemUTC())
                : ShopData.open(DataFolder.take(Path.of(where[0])), Clock.systemUTC());
        long seq = data.journal().read(JOB, 0).size();
        while (true) {
            String file = data.blobs()
                    .put(("picture " + seq).repeat(200).getBytes(StandardCharsets.UTF_8), "image/jpeg")
                    .sha256();
            Appended appended = data.journal()
                    .append(
                            List.of(
                                    new Draft(JOB, seq, new NoteWritten("job", "note " + seq)),
                                    new Draft(JOB, seq + 1, new PhotoTicked("shot-" + seq, true, file))),
                            new Hand("p-1", "bench one"),
                            "writer " + seq,
                            Alongside.nothing());
            if (!(appended instanceof Appended.Kept kept)) {
                throw new IllegalStateException(appended.toString());
            }
            seq = kept.entries().getLast().seq();
            System.out.println(seq + " " + file);
            System.out.flush();
        }
    }
}
