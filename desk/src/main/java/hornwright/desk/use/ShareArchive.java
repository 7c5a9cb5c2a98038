package hornwright.desk.use;

import hornwright.bench.archive.Heard;
import hornwright.bench.archive.Observation;
import hornwright.bench.job.EvidenceBroughtIn.Brought;
import hornwright.bench.job.StreamName;
import hornwright.desk.bag.Bag;
import hornwright.desk.journal.EditJson;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Packs what is known of horns for another shop: one file anybody can open, checked sum by sum when it is received. */
public record ShareArchive(Shop shop) {
    static final String EVIDENCE = "evidence.json";

    /** What would leave, in numbers. */
    public record Contents(String maker, int horns, int looks, int statements, int fittings, int other, int photos) {
        public boolean isEmpty() {
            return horns + looks + statements + fittings + other == 0;
        }
    }

    public List<Contents> contents() {
        return contents(SharedPart.ALL);
    }

    /** Maker by maker; one of whose horns nothing would leave is not named. */
    public List<Contents> contents(SharedPart part) {
        return shop.archive().state().byMaker().values().stream()
                .filter(part::takes)
                .map(part::of)
                .map(this::contents)
                .filter(one -> !one.isEmpty())
                .toList();
    }

    private Contents contents(Brought part) {
        return new Contents(
                part.maker(),
                part.witnesses().size(),
                part.observations().size(),
                part.statements().size(),
                part.fittings().size(),
                part.heard().stream().mapToInt(Heard::size).sum(),
                files(List.of(part)).size());
    }

    /** @param maker whose horns; null for all there are */
    public byte[] pack(@Nullable String maker) {
        return pack(SharedPart.of(maker), false);
    }

    /** @param originals whether the camera's own files leave as well, with all they tell */
    public byte[] pack(SharedPart part, boolean originals) {
        List<Brought> archives = abroad(part);
        TreeMap<String, byte[]> files = new TreeMap<>();
        SharedEvidence shared =
                new SharedEvidence(SharedEvidence.FORMAT, SharedEvidence.VERSION, sender(), name(), archives);
        files.put(
                EVIDENCE,
                text(EditJson.mapper().writerWithDefaultPrettyPrinter().writeValueAsString(shared)));
        SharedTables.of(archives).forEach((name, table) -> files.put(name, text(table)));
        files.put("README.txt", text(READ_ME));
        Originals raw = new Originals(shop);
        files(archives).forEach((hash, bytes) -> {
            files.put(SharedPhotos.FOLDER + hash + ".jpg", bytes);
            if (originals) {
                raw.of(hash).ifPresent(one -> files.put(Originals.FOLDER + hash + one.ending(), one.bytes()));
            }
        });
        return new Bag(
                        Map.of(
                                "Source-Organization",
                                name(),
                                "External-Description",
                                "What is known of how horns left their factories",
                                "External-Identifier",
                                sender()),
                        files)
                .zip("evidence");
    }

    /** SHA-256 of everything that would leave: two shops that know the same of each other have the same. */
    public String contentHash() {
        return KeepFile.nameOf(EditJson.mapper().writeValueAsBytes(abroad(SharedPart.ALL)));
    }

    /** Short and stable: from the first edit this data ever kept, so that no two shops share it. */
    String sender() {
        return "s"
                + shop.data()
                        .journal()
                        .read(StreamName.RULES, 0)
                        .getFirst()
                        .hash()
                        .substring(0, 8);
    }

    String name() {
        String name = shop.house().state().name();
        return name.isEmpty() ? "a shop without a name" : name;
    }

    List<Brought> abroad(SharedPart part) {
        SenderNames names = new SenderNames(sender());
        return shop.archive().state().byMaker().values().stream()
                .filter(part::takes)
                .map(part::of)
                .filter(all -> all.size() > 0)
                .map(names::abroad)
                .toList();
    }

    /** Photographs the looks name, by their hash. They were written anew without place or camera when they came in. */
    private Map<String, byte[]> files(List<Brought> archives) {
        Map<String, byte[]> files = new TreeMap<>();
        KeepFile kept = new KeepFile(shop);
        archives.stream()
                .flatMap(one -> Stream.of(
                                one.observations().stream().map(Observation::file),
                                one.statements().stream()
                                        .map(said -> said.evidence().file()),
                                one.fittings().stream()
                                        .map(said -> said.evidence().file()))
                        .flatMap(all -> all))
                .filter(Objects::nonNull)
                .distinct()
                .forEach(file -> kept.read(file).ifPresent(bytes -> files.put(file, bytes)));
        return files;
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static final String READ_ME = """
            What one shop knows of how horns left their factories.

            horns.csv       every horn somebody looked at
            looks.csv       what was seen at one place of one of them; thickness_mm is at least that, old cork is packed
            statements.csv  what papers, books and people say of many horns
            fits.csv        which part fits where, and who says so
            searches.csv    where somebody looked for more about a place
            asides.csv      which item a shop set aside for itself, and why
            years.csv       from serial to year, by the table of which shop
            photos          the pictures the looks name, by the SHA-256 of their bytes; written anew without place or camera
            originals       only where its sender said so: the camera's own files, which may tell place, time and camera
            evidence.json   all of it; 'hornwright receive' reads it

            An id begins with a short name of the shop that wrote it down. Items of one origin count once, however many
            shops pass them on; what a shop only heard counts as that shop's one voice. No owner, note or job is in here.
            What a shop set aside, it set aside for itself; whoever receives it sees the reason and judges anew.

            The folder is a BagIt bag (RFC 8493): 'sha512sum -c manifest-sha512.txt' checks every file.
            """;
}
