package hornwright.desk.journal;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.job.PhotoTicked;
import java.io.IOException;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A real program is killed in the middle of writing, over and over on the same data. What it was told is kept must be
 * there afterwards, whole; what it was not told may be there or not, but never by half.
 */
@Tag("slow")
final class KilledTest {
    private static final int ROUNDS = 20;

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    /** The last thing the killed program said: how far it had come, and the picture of that edit. */
    private record Told(long seq, String file) {}

    @Test
    void twenty_kills_lose_nothing_that_was_acknowledged_on_sqlite() throws Exception {
        killAgainAndAgain(folder.toString(), new Place.InFolder(folder), ROUNDS);
    }

    @Test
    @Tag("deep")
    @Tag("journal")
    void two_hundred_kills_lose_nothing_that_was_acknowledged_on_sqlite() throws Exception {
        killAgainAndAgain(folder.toString(), new Place.InFolder(folder), 10 * ROUNDS);
    }

    @Test
    @Tag("postgres")
    void kills_of_the_program_lose_nothing_that_was_acknowledged_on_postgresql() throws Exception {
        String url = PostgresServer.freshDatabase();
        killAgainAndAgain(url, new Place.OnServer(url), 6);
    }

    private void killAgainAndAgain(String where, Place place, int rounds) throws Exception {
        Random random = new Random(20);
        long before = 0;
        for (int round = 0; round < rounds; round++) {
            Told told = runAndKill(where, 5 + random.nextInt(150));
            assertThat(told.seq()).as("round %d", round).isGreaterThan(before);
            before = look(place, told);
        }
        assertThat(before).isGreaterThan(rounds);
    }

    /** Opens what is left and returns how far it goes. */
    private static long look(Place place, Told told) {
        try (ShopData data = place.open()) {
            List<Entry> kept = data.journal().read(WriterUntilKilled.JOB, 0);
            long last = kept.getLast().seq();
            assertThat(last).isGreaterThanOrEqualTo(told.seq()).isLessThanOrEqualTo(told.seq() + 2);
            assertThat(kept.size()).isEqualTo((int) last).isEven();
            assertThat(data.journal().checkChain()).isEmpty();
            assertThat(data.database().faults()).isEmpty();
            assertThat(data.blobs().check()).isEmpty();
            assertThat(data.blobs().read(told.file())).isPresent();
            assertThat(kept)
                    .filteredOn(entry -> entry.kind().equals("photo-ticked"))
                    .allSatisfy(entry ->
                            assertThat(data.blobs().find(fileOf(entry))).isPresent());
            return last;
        }
    }

    private static String fileOf(Entry entry) {
        return EditJson.read(entry) instanceof EditJson.Read.Known(PhotoTicked(String shot, boolean taken, String file))
                        && file != null
                ? file
                : "none";
    }

    private Told runAndKill(String where, int millisAfterFirst) throws IOException, InterruptedException {
        Path said = Files.createTempFile("said", ".txt");
        Process process = new ProcessBuilder(command(where))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .redirectOutput(said.toFile())
                .start();
        try {
            while (whole(said).isEmpty()) {
                assertThat(process.isAlive()).as("the writer works").isTrue();
                Thread.sleep(5);
            }
            Thread.sleep(millisAfterFirst);
            process.destroyForcibly();
            assertThat(process.waitFor(20, TimeUnit.SECONDS)).isTrue();
            assertThat(process.exitValue()).as("it was killed and did not end").isNotZero();
            String[] told = whole(said).getLast().split(" ");
            return new Told(Long.parseLong(told[0]), told[1]);
        } finally {
            process.destroyForcibly();
            Files.delete(said);
        }
    }

    /** The kill may have cut the last line in two; what was not told whole was not told. */
    private static List<String> whole(Path said) throws IOException {
        return Files.readString(said)
                .lines()
                .filter(line -> line.matches("\\d+ [0-9a-f]{64}"))
                .toList();
    }

    private static List<String> command(String where) {
        return List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "--enable-native-access=ALL-UNNAMED",
                "-cp",
                classPath(),
                WriterUntilKilled.class.getName(),
                where);
    }

    /** The class path of these tests, however they were started. */
    private static String classPath() {
        List<String> parts = new ArrayList<>();
        if (KilledTest.class.getClassLoader() instanceof URLClassLoader loader) {
            for (URL url : loader.getURLs()) {
                parts.add(Path.of(URI.create(url.toString())).toString());
            }
        }
        parts.add(System.getProperty("java.class.path"));
        return String.join(System.getProperty("path.separator"), parts);
    }
}
