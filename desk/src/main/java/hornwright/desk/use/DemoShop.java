package hornwright.desk.use;

import hornwright.bench.job.StreamName;
import hornwright.desk.archivefile.ArchiveFile;
import hornwright.desk.journal.Draft;
import hornwright.desk.journal.EditLine;
import hornwright.desk.journal.Person;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The shop a person finds on the first run. Everything in it is invented: a maker that never was, horns nobody built,
 * readings nobody took. It is kept as the edits a bench would have made, and appended like any others.
 */
record DemoShop(Shop shop) {
    static final List<String> FILES = List.of("stock", "alto", "tenor", "odd");

    void fill() {
        people().forEach(new KeepPerson(shop)::put);
        new FurnishShop(shop).name(Form.once(shop.house().seq(), OpenShop.PROGRAM), "Quayside Winds");
        append("archive", archive());
        FILES.forEach(file -> append(file, lines(file)));
        new DemoPictures(shop).put("q-0001");
    }

    private static List<EditLine> archive() {
        return ArchiveEdits.of(ArchiveFile.demo()).stream()
                .map(edit -> new EditLine(StreamName.ARCHIVE, edit))
                .toList();
    }

    private void append(String file, List<EditLine> edits) {
        Map<StreamName, Long> reached = new HashMap<>();
        List<Draft> drafts = new ArrayList<>();
        for (EditLine line : edits) {
            long expected = reached.computeIfAbsent(
                    line.stream(), stream -> shop.history(stream).seq());
            drafts.add(new Draft(line.stream(), expected, line.edit()));
            reached.put(line.stream(), expected + 1);
        }
        Saved saved = shop.save(drafts, new Form(0, OpenShop.PROGRAM, "demo " + file));
        if (!(saved instanceof Saved.Kept)) {
            throw new IllegalStateException("the demo was not kept: " + saved);
        }
    }

    private static List<Person> people() {
        return List.of(
                new Person("p-harbour-town-band", "Harbour Town Band", "4 Pier Lane", "", ""),
                new Person("p-ferry-lane-school", "Ferry Lane School", "1 Ferry Lane", "", ""),
                new Person("p-lock-street-trio", "Lock Street Trio", "12 Lock Street", "", ""));
    }

    static List<EditLine> lines(String file) {
        String path = "/hornwright/demo/" + file + ".jsonl";
        try (InputStream in = DemoShop.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException(path + " is missing from the program");
            }
            return EditLine.read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
