package hornwright.desk.use;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Bearing;
import hornwright.bench.archive.Edtf;
import hornwright.bench.archive.Evidence;
import hornwright.bench.archive.FitKind;
import hornwright.bench.archive.Fitting;
import hornwright.bench.archive.Hand;
import hornwright.bench.archive.Integrity;
import hornwright.bench.archive.Interchange;
import hornwright.bench.archive.Interest;
import hornwright.bench.archive.Kind;
import hornwright.bench.archive.Means;
import hornwright.bench.archive.Method;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Origin;
import hornwright.bench.archive.Resolution;
import hornwright.bench.archive.SearchLog;
import hornwright.bench.archive.SerialRange;
import hornwright.bench.archive.Stance;
import hornwright.bench.archive.Statement;
import hornwright.bench.archive.Witness;
import hornwright.bench.archive.YearRow;
import hornwright.bench.horn.Voice;
import hornwright.bench.job.StreamName;
import hornwright.desk.bag.Bag;
import hornwright.desk.bag.BagReader;
import hornwright.desk.bag.UnreadableBag;
import hornwright.desk.journal.Place;
import hornwright.desk.picture.Camera;
import hornwright.desk.picture.CleanPicture;
import hornwright.desk.picture.Darkroom;
import java.awt.image.BufferedImage;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What leaves a shop, what comes in, and that shops who tell each other everything end up knowing the same. */
final class ShareArchiveTest {
    private static final String MAKER = "Tarrant & Loe";
    private static final Edtf WHEN = Edtf.parse("2026-11");
    private static final List<String> MATERIALS = List.of("cork", "felt", "rubber");

    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    private final List<Shop> shops = new ArrayList<>();

    @BeforeEach
    void open() {
        for (String name : List.of("Quayside Winds", "Harbour Reeds", "Ferry Brass")) {
            Shop shop = OpenShop.open(
                    new OpenShop.Where.Folder(folder.resolve(name)), OpenShop.FirstRun.EMPTY, Place.CLOCK);
            new FurnishShop(shop).name(Form.once(shop.house().seq(), OpenShop.PROGRAM), name);
            shops.add(shop);
        }
    }

    @AfterEach
    void close() {
        shops.forEach(Shop::close);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void shops_that_tell_each_other_everything_end_with_the_same_content(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 36; i++) {
            Shop one = shops.get(random.nextInt(3));
            if (random.nextInt(3) == 0) {
                receive(shops.get(random.nextInt(3)), one);
            } else {
                writeDown(one, random);
            }
        }
        for (int round = 0; round < 2; round++) {
            for (Shop to : shops) {
                shops.stream().filter(from -> from != to).forEach(from -> receive(to, from));
            }
        }
        List<String> hashes =
                shops.stream().map(shop -> new ShareArchive(shop).contentHash()).toList();
        assertThat(hashes).containsOnly(hashes.getFirst());
        assertThat(archive(shops.get(0)).witnesses()).hasSizeGreaterThan(3);
        assertThat(archive(shops.get(0)).heard())
                .as("searches, asides and years travel too")
                .isNotEmpty();
        assertThat(archive(shops.get(0)).fittings()).isNotEmpty();
        long before = shops.get(0).archive().seq();
        ReceiveArchive.Outcome again = receive(shops.get(0), shops.get(1));
        assertThat(again.fresh() + again.changed()).isZero();
        assertThat(again.conflicts()).isEmpty();
        assertThat(shops.get(0).archive().seq()).isEqualTo(before);
    }

    @Test
    void searches_asides_years_and_what_fits_travel_under_the_name_of_their_shop_and_overrule_nothing() {
        Shop from = shops.get(0);
        Shop to = shops.get(1);
        for (Shop shop : List.of(from, to)) {
            GrowArchive grow = new GrowArchive(shop);
            boolean first = shop == from;
            grow.year(form(shop), MAKER, new YearRow(40_000, Edtf.parse(first ? "1930" : "1931"), "day book"));
            grow.year(form(shop), MAKER, new YearRow(first ? 41_000 : 42_000, Edtf.parse("1935"), "day book"));
        }
        witness(from, "w-1", "first model");
        look(from, "1", "w-1", new Random(1));
        GrowArchive grow = new GrowArchive(from);
        grow.search(form(from), MAKER, "foot.d", new SearchLog("drawer of sheets", WHEN, "cork"));
        grow.resolve(form(from), MAKER, new Resolution("e-1", "a later felt", "the bench", WHEN));
        grow.fit(form(from), MAKER, fitting("f-1", "screw, demo"));
        Archive before = archive(to);
        assertThat(receive(to, from).conflicts()).isEmpty();
        Archive after = archive(to);
        assertThat(after.search("foot.d")).isEqualTo(archive(from).search("foot.d"));
        assertThat(after.resolutions()).as("an aside is shown, not followed").isEmpty();
        assertThat(after.heard()).singleElement().satisfies(heard -> {
            assertThat(heard.from()).isEqualTo(new ShareArchive(from).sender());
            assertThat(heard.resolutions()).extracting(Resolution::evidence).containsExactly(heard.from() + ":e-1");
        });
        assertThat(after.years()).isEqualTo(before.years());
        assertThat(after.allYears().rows()).extracting(YearRow::serial).containsExactly(40_000L, 41_000L, 42_000L);
        assertThat(new Interchange(after).at(Voice.ALTO, "resonator.d", 41_000L))
                .singleElement()
                .satisfies(fits -> assertThat(fits.about().part()).isEqualTo("screw, demo"));
        receive(from, to);
        assertThat(new ShareArchive(from).contentHash()).isEqualTo(new ShareArchive(to).contentHash());
    }

    @Test
    void a_part_by_place_by_serials_or_by_paper_holds_that_part_and_nothing_else() {
        Shop from = shops.get(0);
        witness(from, "w-1", "first model");
        look(from, "1", "w-1", new Random(1));
        state(from, "b-1", new Means.Published(true), "Handbook");
        state(from, "b-2", new Means.Published(true), "Almanac");
        new GrowArchive(from).search(form(from), MAKER, "foot.d", new SearchLog("drawer", WHEN, "cork"));
        assertThat(part(from, new SharedPart(null, "foot.d", null, null))).isEqualTo("1 1 2 1");
        assertThat(part(from, new SharedPart(null, "foot.e", null, null))).isEqualTo("nothing");
        assertThat(part(from, new SharedPart(null, null, new SerialRange(41_000, 41_500), null)))
                .isEqualTo("1 1 2 1");
        assertThat(part(from, new SharedPart(null, null, new SerialRange(41_500, 41_900), null)))
                .isEqualTo("0 0 2 1");
        assertThat(part(from, new SharedPart(null, null, null, "Handbook"))).isEqualTo("0 0 1 0");
        ReceiveArchive.Outcome part = new ReceiveArchive(shops.get(1))
                .receive(
                        form(shops.get(1)),
                        new ShareArchive(from).pack(new SharedPart(null, null, null, "Handbook"), false),
                        false);
        assertThat(part.fresh()).isEqualTo(1);
        assertThat(receive(shops.get(1), from).conflicts()).isEmpty();
        assertThat(new ShareArchive(shops.get(1)).contentHash()).isEqualTo(new ShareArchive(from).contentHash());
    }

    private static String part(Shop shop, SharedPart part) {
        return new ShareArchive(shop)
                .contents(part).stream()
                        .map(of -> "%d %d %d %d".formatted(of.horns(), of.looks(), of.statements(), of.other()))
                        .findFirst()
                        .orElse("nothing");
    }

    private static Form form(Shop shop) {
        return Form.once(shop.archive().seq(), OpenShop.PROGRAM);
    }

    @Test
    void what_came_in_is_one_edit_under_the_name_of_its_sender_and_one_undo_takes_it_out() {
        Shop from = shops.get(0);
        Shop to = shops.get(1);
        writeDown(from, new Random(1));
        writeDown(from, new Random(2));
        writeDown(to, new Random(3));
        Archive before = archive(to);
        long seq = to.archive().seq();
        assertThat(receive(to, from).fresh()).isPositive();
        assertThat(to.archive().seq()).isEqualTo(seq + 1);
        assertThat(to.archive().edits().getLast().edit().inWords()).contains("brought in from Quayside Winds");
        new Undo(to).undo(StreamName.ARCHIVE, Form.once(seq + 1, OpenShop.PROGRAM), seq + 1);
        assertThat(archive(to)).isEqualTo(before);
    }

    @Test
    void trying_writes_nothing() {
        writeDown(shops.get(0), new Random(1));
        Shop to = shops.get(1);
        ReceiveArchive.Outcome outcome = new ReceiveArchive(to)
                .receive(Form.once(0, OpenShop.PROGRAM), new ShareArchive(shops.get(0)).pack(null), true);
        assertThat(outcome.fresh()).isPositive();
        assertThat(to.archive().seq()).isZero();
    }

    @Test
    void an_author_may_change_his_own_and_nobody_else_may() {
        Shop author = shops.get(0);
        Shop reader = shops.get(1);
        Shop meddler = shops.get(2);
        witness(author, "w-1", "first model");
        receive(reader, author);
        receive(meddler, author);
        String foreign = archive(meddler).witnesses().getFirst().id();
        witness(meddler, foreign, "another model");
        assertThat(receive(reader, meddler).conflicts())
                .singleElement()
                .asString()
                .contains("told differently by Ferry");
        assertThat(archive(reader).witnesses().getFirst().model()).isEqualTo("first model");
        assertThat(receive(author, meddler).conflicts()).hasSize(1);
        witness(author, "w-1", "second model");
        assertThat(receive(reader, author).changed()).isEqualTo(1);
        assertThat(archive(reader).witnesses().getFirst().model()).isEqualTo("second model");
    }

    @Test
    void what_was_taken_back_does_not_come_home_again() {
        Shop author = shops.get(0);
        witness(author, "w-1", "first model");
        receive(shops.get(1), author);
        new Undo(author).undo(StreamName.ARCHIVE, Form.once(1, OpenShop.PROGRAM), 1);
        assertThat(receive(author, shops.get(1)).conflicts())
                .singleElement()
                .asString()
                .contains("taken back here");
        assertThat(archive(author).witnesses()).isEmpty();
    }

    @Test
    void what_a_shop_only_heard_counts_as_its_one_voice_and_a_book_keeps_its_name() {
        Shop from = shops.get(0);
        for (int i = 0; i < 3; i++) {
            state(from, "h-" + i, new Means.Rumoured(), "forum " + i);
            state(from, "b-" + i, new Means.Published(true), "Handbook");
        }
        receive(shops.get(1), from);
        List<Statement> came = archive(shops.get(1)).statements();
        assertThat(came.stream()
                        .filter(said -> said.evidence().kind() == Kind.HEARSAY)
                        .map(said -> said.evidence().origin().id())
                        .distinct())
                .singleElement()
                .asString()
                .endsWith(":heard");
        assertThat(came.stream()
                        .filter(said -> said.evidence().kind() == Kind.LITERATURE)
                        .map(said -> said.evidence().origin().id())
                        .distinct())
                .containsExactly("Handbook");
    }

    @Test
    void a_bag_holds_tables_pictures_and_no_owner() {
        try (Shop demo =
                OpenShop.open(new OpenShop.Where.Folder(folder.resolve("demo")), OpenShop.FirstRun.DEMO, Place.CLOCK)) {
            byte[] photo = Camera.photograph(new BufferedImage(40, 30, 1), 1, ByteOrder.BIG_ENDIAN);
            CleanPicture clean = Darkroom.develop(photo);
            String file =
                    new KeepFile(demo).keep(clean.large(), CleanPicture.MEDIA).sha256();
            Witness horn = archive(demo).witnesses().getFirst();
            new GrowArchive(demo)
                    .observe(
                            Form.once(demo.archive().seq(), OpenShop.PROGRAM),
                            List.of(look("e-photo", horn.id(), "=felt", file)));
            byte[] zip = new ShareArchive(demo).pack(MAKER);
            Bag bag = BagReader.read(zip);
            assertThat(bag.files().keySet())
                    .contains("horns.csv", "looks.csv", "evidence.json", "README.txt", "photos/" + file + ".jpg");
            String all = bag.files().values().stream()
                    .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
                    .reduce("", String::concat);
            assertThat(all).doesNotContain("Harbour Town", "Ferry Lane", "Lock Street", "Pier Lane", "SECRET", "Exif");
            assertThat(new String(bag.files().get("looks.csv"), StandardCharsets.UTF_8))
                    .contains(",'=felt,");
            ReceiveArchive.Outcome outcome =
                    new ReceiveArchive(shops.get(0)).receive(Form.once(0, OpenShop.PROGRAM), zip, false);
            assertThat(outcome.photos()).isEqualTo(1);
            assertThat(new KeepFile(shops.get(0)).read(file)).contains(clean.large());
            assertThat(new CheckShop(shops.get(0)).check().faults()).isEmpty();
        }
    }

    @Test
    void a_bag_that_says_more_than_it_may_is_refused_whole() {
        Shop from = shops.get(0);
        witness(from, "w-1", "first model");
        Bag good = BagReader.read(new ShareArchive(from).pack(null));
        refused(
                with(good, "evidence.json", text(good, "evidence.json").replaceAll("s[0-9a-f]{8}:w-1", "w-1")),
                "which shop");
        refused(with(good, "evidence.json", text(good, "evidence.json") + "x"), "cannot be read");
        refused(with(good, "evidence.json", "{\"format\": \"hornwright evidence\"}"), "cannot be read");
        byte[] told = Camera.photograph(new BufferedImage(40, 30, 1), 1, ByteOrder.BIG_ENDIAN);
        TreeMap<String, byte[]> files = new TreeMap<>(good.files());
        files.put("photos/" + KeepFile.nameOf(told) + ".jpg", told);
        refused(new Bag(good.info(), files), "carries more than the picture");
        files.clear();
        files.putAll(good.files());
        files.put("photos/" + "0".repeat(64) + ".jpg", told);
        refused(new Bag(good.info(), files), "not the one it is named by");
        assertThat(shops.get(1).archive().seq()).isZero();
    }

    private void refused(Bag bag, String why) {
        assertThatThrownBy(() -> new ReceiveArchive(shops.get(1))
                        .receive(Form.once(0, OpenShop.PROGRAM), bag.zip("evidence"), false))
                .isInstanceOf(UnreadableBag.class)
                .hasMessageContaining(why);
    }

    private static Bag with(Bag bag, String path, String text) {
        TreeMap<String, byte[]> files = new TreeMap<>(bag.files());
        files.put(path, text.getBytes(StandardCharsets.UTF_8));
        return new Bag(bag.info(), files);
    }

    private static String text(Bag bag, String path) {
        return new String(bag.file(path).orElseThrow(), StandardCharsets.UTF_8);
    }

    private static ReceiveArchive.Outcome receive(Shop to, Shop from) {
        return new ReceiveArchive(to)
                .receive(Form.once(to.archive().seq(), OpenShop.PROGRAM), new ShareArchive(from).pack(null), false);
    }

    /** A new horn with a look, one more look at a horn that is known, a changed mind about an own horn, or a saying. */
    private static void writeDown(Shop shop, Random random) {
        String id = UUID.nameUUIDFromBytes(new byte[] {(byte) random.nextInt(), (byte) random.nextInt()})
                .toString();
        List<Witness> known = archive(shop).witnesses();
        List<Witness> own =
                known.stream().filter(one -> !SenderNames.isForeign(one.id())).toList();
        int what = random.nextInt(10);
        Form form = Form.once(shop.archive().seq(), OpenShop.PROGRAM);
        GrowArchive grow = new GrowArchive(shop);
        if (what == 4) {
            grow.search(form, MAKER, "foot." + random.nextInt(3), new SearchLog("drawer", WHEN, "cork " + id));
        } else if (what == 5 && !archive(shop).observations().isEmpty()) {
            List<Observation> looks = archive(shop).observations();
            String of = looks.get(random.nextInt(looks.size())).id();
            grow.resolve(form, MAKER, new Resolution(of, "a later felt, " + id, "the bench", WHEN));
        } else if (what == 6) {
            int later = random.nextInt(30);
            grow.year(form, MAKER, new YearRow(40_000 + 10L * later, Edtf.parse("" + (1920 + later)), "leaf " + id));
        } else if (what == 7) {
            grow.fit(form, MAKER, fitting("f-" + id, "thread " + random.nextInt(3)));
        } else if (what == 1 && !known.isEmpty()) {
            look(shop, id, known.get(random.nextInt(known.size())).id(), random);
        } else if (what == 2 && !own.isEmpty()) {
            witness(shop, own.get(random.nextInt(own.size())).id(), "model " + random.nextInt());
        } else if (what == 3) {
            state(shop, "s-" + id, new Means.Rumoured(), "forum " + random.nextInt(3));
        } else {
            witness(shop, "w-" + id, "first model");
            look(shop, id, "w-" + id, random);
        }
    }

    private static Fitting fitting(String id, String part) {
        Statement like = statement(id, new Means.Told(true), "the foreman");
        return new Fitting(FitKind.RESONATOR_SCREW, Voice.ALTO, List.of("resonator.d"), part, 2.2, like.evidence());
    }

    private static void witness(Shop shop, String id, String model) {
        new GrowArchive(shop)
                .witness(
                        Form.once(shop.archive().seq(), OpenShop.PROGRAM),
                        new Witness(id, 41_000, Voice.ALTO, MAKER, model, null, Integrity.ORIGINAL, Map.of()));
    }

    private static void look(Shop shop, String id, String witness, Random random) {
        new GrowArchive(shop)
                .observe(
                        Form.once(shop.archive().seq(), OpenShop.PROGRAM),
                        List.of(look("e-" + id, witness, MATERIALS.get(random.nextInt(3)), null)));
    }

    private static Observation look(String id, String witness, String material, @Nullable String file) {
        return new Observation(
                id,
                witness,
                "foot.d",
                material,
                null,
                1.9,
                null,
                null,
                null,
                new Means.Examined(Method.SEEN, true),
                Hand.FIRST,
                Bearing.DIRECT,
                new Origin("horn 41000", Kind.OBJECT),
                Interest.NEUTRAL,
                "book 3",
                file);
    }

    private static void state(Shop shop, String id, Means means, String origin) {
        new GrowArchive(shop)
                .state(Form.once(shop.archive().seq(), OpenShop.PROGRAM), MAKER, statement(id, means, origin));
    }

    private static Statement statement(String id, Means means, String origin) {
        return new Statement(
                Voice.ALTO,
                "foot.d",
                "cork",
                new Evidence(
                        id,
                        means,
                        Hand.SECOND,
                        Bearing.DIRECT,
                        Stance.SUPPORTS,
                        new Origin(origin, means.kind()),
                        Interest.NEUTRAL,
                        Integrity.UNKNOWN,
                        new SerialRange(40_000, 42_000),
                        "page 4",
                        null,
                        null));
    }

    private static Archive archive(Shop shop) {
        return shop.archive().state().of(MAKER);
    }
}
