package hornwright.desk.use;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Witness;
import hornwright.bench.job.EvidenceBroughtIn.Brought;
import hornwright.bench.job.StreamName;
import hornwright.desk.bag.Bag;
import hornwright.desk.csv.CsvTable;
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
    static final String PHOTOS = "photos/";

    /** What would leave, in numbers. */
    public record Contents(String maker, int horns, int looks, int statements, int photos) {}

    public List<Contents> contents() {
        return shop.archive().state().byMaker().values().stream()
                .filter(archive ->
                        !archive.witnesses().isEmpty() || !archive.statements().isEmpty())
                .map(archive -> new Contents(
                        archive.maker(),
                        archive.witnesses().size(),
                        archive.observations().size(),
                        archive.statements().size(),
                        files(List.of(Brought.of(archive))).size()))
                .toList();
    }

    /** @param maker whose horns; null for all there are */
    public byte[] pack(@Nullable String maker) {
        List<Brought> archives = abroad(maker);
        TreeMap<String, byte[]> files = new TreeMap<>();
        SharedEvidence shared =
                new SharedEvidence(SharedEvidence.FORMAT, SharedEvidence.VERSION, sender(), name(), archives);
        files.put(
                EVIDENCE,
                text(EditJson.mapper().writerWithDefaultPrettyPrinter().writeValueAsString(shared)));
        files.put("horns.csv", text(horns(archives)));
        files.put("looks.csv", text(looks(archives)));
        files.put("README.txt", text(READ_ME));
        files(archives).forEach((hash, bytes) -> files.put(PHOTOS + hash + ".jpg", bytes));
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
        return KeepFile.nameOf(EditJson.mapper().writeValueAsBytes(abroad(null)));
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

    private String name() {
        String name = shop.house().state().name();
        return name.isEmpty() ? "a shop without a name" : name;
    }

    List<Brought> abroad(@Nullable String maker) {
        SenderNames names = new SenderNames(sender());
        return shop.archive().state().byMaker().values().stream()
                .filter(archive -> maker == null || archive.maker().equals(maker))
                .map(ShareArchive::all)
                .filter(all -> all.size() > 0)
                .map(names::abroad)
                .toList();
    }

    private static Brought all(Archive archive) {
        return Brought.of(archive);
    }

    /** Photographs the looks name, by their hash. They were written anew without place or camera when they came in. */
    private Map<String, byte[]> files(List<Brought> archives) {
        Map<String, byte[]> files = new TreeMap<>();
        KeepFile kept = new KeepFile(shop);
        archives.stream()
                .flatMap(one -> Stream.concat(
                        one.observations().stream().map(Observation::file),
                        one.statements().stream().map(said -> said.evidence().file())))
                .filter(Objects::nonNull)
                .distinct()
                .forEach(file -> kept.read(file).ifPresent(bytes -> files.put(file, bytes)));
        return files;
    }

    private static String horns(List<Brought> archives) {
        StringBuilder table = new StringBuilder(
                CsvTable.line(Stream.of("id", "maker", "serial", "voice", "model", "built", "integrity")));
        for (Brought one : archives) {
            for (Witness horn : one.witnesses()) {
                table.append(CsvTable.line(Stream.of(
                        horn.id(),
                        one.maker(),
                        Long.toString(horn.serial()),
                        horn.voice().word(),
                        horn.model(),
                        horn.built() == null ? "" : horn.built().text(),
                        horn.integrity().word())));
            }
        }
        return table.toString();
    }

    private static String looks(List<Brought> archives) {
        StringBuilder table = new StringBuilder(CsvTable.line(Stream.of(
                "id",
                "horn",
                "place",
                "material",
                "colour",
                "thickness_mm",
                "adhesive",
                "hand",
                "origin",
                "interest",
                "citation",
                "photo")));
        for (Brought one : archives) {
            for (Observation look : one.observations()) {
                table.append(CsvTable.line(Stream.of(
                        look.id(),
                        look.witness(),
                        look.place(),
                        look.material(),
                        orEmpty(look.colour()),
                        look.thicknessAtLeastMm() == null
                                ? ""
                                : look.thicknessAtLeastMm().toString(),
                        orEmpty(look.adhesive()),
                        look.hand().word(),
                        look.origin().id(),
                        look.interest().word(),
                        orEmpty(look.citation()),
                        orEmpty(look.file()))));
            }
        }
        return table.toString();
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static final String READ_ME = """
            What one shop knows of how horns left their factories.

            horns.csv       every horn somebody looked at
            looks.csv       what was seen at one place of one of them; thickness_mm is at least that, old cork is packed
            photos          the pictures the looks name, by the SHA-256 of their bytes; written anew without place or camera
            evidence.json   all of it, with statements of papers, books and people; 'hornwright receive' reads it

            An id begins with a short name of the shop that wrote it down. Items of one origin count once, however many
            shops pass them on; what a shop only heard counts as that shop's one voice. No owner, note or job is in here, and
            no judgement: what a shop set aside, it set aside for itself.

            The folder is a BagIt bag (RFC 8493): 'sha512sum -c manifest-sha512.txt' checks every file.
            """;
}
