package hornwright.desk.use;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornwright.bench.job.Job;
import hornwright.bench.job.StreamName;
import hornwright.bench.survey.Moment;
import hornwright.bench.survey.Photo;
import hornwright.desk.bag.Bag;
import hornwright.desk.bag.BagReader;
import hornwright.desk.bag.UnreadableBag;
import hornwright.desk.journal.Place;
import hornwright.desk.picture.Camera;
import java.awt.image.BufferedImage;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was looked at and measured on one horn, in another shop. */
final class ShareSurveyTest {
    private static final String HORN = "q-0001";
    private static final byte[] CAMERA = Camera.photograph(new BufferedImage(60, 40, 1), 6, ByteOrder.LITTLE_ENDIAN);

    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    @SuppressWarnings("NullAway.Init")
    private Shop from;

    @SuppressWarnings("NullAway.Init")
    private Shop to;

    @BeforeEach
    void open() {
        from = OpenShop.open(new OpenShop.Where.Folder(folder.resolve("from")), OpenShop.FirstRun.DEMO, Place.CLOCK);
        to = OpenShop.open(new OpenShop.Where.Folder(folder.resolve("to")), OpenShop.FirstRun.EMPTY, Place.CLOCK);
    }

    @AfterEach
    void close() {
        from.close();
        to.close();
    }

    @Test
    void a_survey_travels_whole_and_leaves_owner_words_and_decisions_at_home() {
        Job at = from.jobNow(HORN);
        assertThat(at.arrival().owner()).isNotNull();
        byte[] zip = new ShareSurvey(from).pack(HORN, false);
        Bag bag = BagReader.read(zip);
        String all = bag.files().entrySet().stream()
                .filter(file -> !file.getKey().startsWith("photos/"))
                .map(file -> new String(file.getValue(), StandardCharsets.UTF_8))
                .reduce("", String::concat);
        assertThat(all)
                .doesNotContain(at.arrival().complaint(), "Harbour Town", "Ferry Lane", "Lock Street", "Pier Lane");
        ReceiveSurvey.Outcome outcome = receive(bag, false);
        Job there = to.jobNow(outcome.job().orElseThrow());
        assertThat(there.readings()).isEqualTo(at.readings());
        assertThat(there.findings()).isEqualTo(at.findings());
        assertThat(there.keeping().photos().keySet())
                .isEqualTo(at.keeping().photos().keySet());
        assertThat(there.arrival().owner()).isNull();
        assertThat(there.decisions()).isEmpty();
        assertThat(new CheckShop(to).check().faults()).isEmpty();
    }

    @Test
    void coming_again_it_adds_nothing_and_told_otherwise_it_is_a_conflict() {
        Bag bag = BagReader.read(new ShareSurvey(from).pack(HORN, false));
        assertThat(receive(bag, true).job()).as("trying writes nothing").isEmpty();
        String first = receive(bag, false).job().orElseThrow();
        ReceiveSurvey.Outcome again = receive(bag, false);
        assertThat(again.known()).isTrue();
        assertThat(again.job()).contains(first);
        put(false);
        ReceiveSurvey.Outcome other = receive(BagReader.read(new ShareSurvey(from).pack(HORN, false)), false);
        assertThat(other.conflict()).contains("reads otherwise");
        assertThat(to.data().journal().streams().stream().filter(StreamName::isJob))
                .hasSize(1);
        new Undo(to).undo(StreamName.ofJob(first), Form.once(1, OpenShop.PROGRAM), 1);
        assertThat(receive(bag, false).conflict()).contains("taken back here");
    }

    @Test
    void what_the_camera_wrote_is_kept_only_when_ticked_and_leaves_only_when_ticked_again() {
        put(false);
        assertThat(last().original()).isNull();
        put(true);
        String original = last().original();
        assertThat(new KeepFile(from).read(String.valueOf(original))).contains(CAMERA);
        assertThat(all(new ShareSurvey(from).pack(HORN, false))).doesNotContain("SECRET", original);
        assertThat(all(new ShareSurvey(from).pack(HORN, true))).contains("SECRET");
        Bag ticked = BagReader.read(new ShareSurvey(from).pack(HORN, true));
        assertThat(ticked.files()).containsKey("originals/" + last().file() + ".jpg");
        Job there = to.jobNow(receive(ticked, false).job().orElseThrow());
        assertThat(there.keeping().photos().values()).allMatch(photo -> photo.original() == null);
        assertThat(new CheckShop(from).check().faults()).isEmpty();
    }

    @Test
    void a_survey_that_tells_more_than_it_may_or_misses_a_picture_is_refused() {
        Bag good = BagReader.read(new ShareSurvey(from).pack(HORN, false));
        String json = new String(good.file("survey.json").orElseThrow(), StandardCharsets.UTF_8);
        TreeMap<String, byte[]> files = new TreeMap<>(good.files());
        files.put(
                "survey.json",
                json.replaceFirst("\"complaint\" : \"\"", "\"complaint\" : \"it leaks\"")
                        .getBytes(StandardCharsets.UTF_8));
        assertThatThrownBy(() -> receive(new Bag(good.info(), files), false))
                .isInstanceOf(UnreadableBag.class)
                .hasMessageContaining("tells more");
        TreeMap<String, byte[]> fewer = new TreeMap<>(good.files());
        fewer.keySet().removeIf(name -> name.startsWith("photos/"));
        assertThatThrownBy(() -> receive(new Bag(good.info(), fewer), false)).hasMessageContaining("not in the bag");
        assertThat(to.data().journal().streams().stream().filter(StreamName::isJob))
                .isEmpty();
    }

    private static String all(byte[] zip) {
        return BagReader.read(zip).files().values().stream()
                .map(bytes -> new String(bytes, StandardCharsets.ISO_8859_1))
                .reduce("", String::concat);
    }

    private void put(boolean originals) {
        new PutPhoto(from)
                .put(
                        HORN,
                        Form.once(from.job(HORN).seq(), OpenShop.PROGRAM),
                        List.of(CAMERA),
                        new PutPhoto.Shows(Moment.DURING, null, "pad.d"),
                        originals);
    }

    private Photo last() {
        return List.copyOf(from.jobNow(HORN).keeping().photos().values()).getLast();
    }

    private ReceiveSurvey.Outcome receive(Bag bag, boolean only) {
        return new ReceiveSurvey(to).receive(Form.once(0, OpenShop.PROGRAM), bag, only);
    }
}
