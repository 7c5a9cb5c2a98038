package hornwright.desk.web.sheets;

import hornwright.bench.adhesive.AdhesiveSheet;
import hornwright.bench.body.FinishSheet;
import hornwright.bench.body.FinishSign;
import hornwright.bench.body.Pictured;
import hornwright.bench.care.AdhesiveRemoval;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.RimKind;
import hornwright.bench.horn.ToneHole;
import hornwright.bench.horn.Word;
import hornwright.bench.plan.measured.HingePlay;
import hornwright.bench.rim.RimSheet;
import hornwright.bench.seal.LeakSheet;
import hornwright.bench.seal.LeakSite;
import hornwright.bench.seal.LeakSites;
import hornwright.bench.seal.SealSheet;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.RimChoice;
import hornwright.desk.web.view.OnBench;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Which readings a sheet asks for, and in what order they stand on it. */
final class SheetLayout {
    private final OnBench bench;

    SheetLayout(OnBench bench) {
        this.bench = bench;
    }

    /** A heading with the lines under it. */
    record Section(String title, String how, List<Line> lines) {}

    /**
     * One thing that is read.
     *
     * @param fields always in sight
     * @param more only opened when they are needed
     */
    record Line(String id, String name, String address, List<Field> fields, List<Field> more) {}

    /** One field; with options it is chosen instead of typed. */
    record Field(ReadingKind kind, String of, String point, String label, List<String> options) {
        static Field typed(ReadingKind kind, String of, String point, String label) {
            return new Field(kind, of, point, label, List.of());
        }

        static Field chosen(ReadingKind kind, String of, String point, String label, String... options) {
            return new Field(kind, of, point, label, List.of(options));
        }

        String name() {
            return "r/%s/%s/%s".formatted(kind.name(), of, point);
        }
    }

    List<Section> of(BenchSheet sheet) {
        return switch (sheet) {
            case FIT -> fit();
            case HOLES -> holes();
            case FINISH -> finish();
            case ADHESIVES -> adhesives();
            case NECK -> NeckLayout.sections();
            case LEAKS -> leaks();
            case OCTAVE -> new OctaveLayout(bench).sections();
        };
    }

    private List<Section> fit() {
        List<Section> sections = new ArrayList<>();
        for (KeyGroup group : KeyGroup.values()) {
            List<Line> lines =
                    bench.keywork().group(group).stream().map(this::keyFit).toList();
            if (!lines.isEmpty()) {
                sections.add(new Section(group.title(), "", lines));
            }
        }
        return sections;
    }

    private Line keyFit(Key key) {
        return new Line(
                key.id(),
                OnBench.capital(key.name().display()),
                address(key),
                List.of(Field.typed(ReadingKind.PLAY, key.id(), "at the hinge tube", "Felt across, along")),
                Stream.of(
                                Field.typed(ReadingKind.HINGE, key.id(), HingePlay.ACROSS, "Clearance"),
                                Field.typed(ReadingKind.HINGE, key.id(), HingePlay.ALONG, "Along the rod"),
                                Field.typed(ReadingKind.HINGE, key.id(), HingePlay.CLOSABLE, "Tube that can be closed"))
                        .toList());
    }

    private List<Section> holes() {
        List<Section> sections = new ArrayList<>();
        for (KeyGroup group : KeyGroup.values()) {
            List<Line> lines = bench.keywork().cups().stream()
                    .filter(cup -> bench.keywork().keyOf(cup).group() == group)
                    .map(this::rim)
                    .toList();
            if (!lines.isEmpty()) {
                sections.add(new Section(group.title(), "", lines));
            }
        }
        return sections;
    }

    private Line rim(Cup cup) {
        ToneHole hole = bench.keywork().holeOf(cup);
        List<Field> more = new ArrayList<>();
        more.add(Field.chosen(
                ReadingKind.RIM_CHECK,
                hole.id(),
                RimChoice.POINT,
                "Choice",
                Stream.of(RimChoice.values()).map(RimChoice::word).toArray(String[]::new)));
        more.add(Field.typed(ReadingKind.METAL_OFF, hole.id(), RimSheet.OFF, "Taken off"));
        if (hole.rim() == RimKind.SOLDERED) {
            more.add(Field.chosen(ReadingKind.RIM_CHECK, hole.id(), RimSheet.RING, "Ring", "tight", "leaks"));
        }
        return new Line(
                hole.id(),
                bench.heading(cup),
                bench.padOf(cup).map(Place::id).map(bench::placeAddress).orElse(""),
                List.of(Field.typed(
                        ReadingKind.RIM_GAP,
                        hole.id(),
                        "under a flat disc",
                        OnBench.capital(hole.rim().word()) + " rim: gap at clock")),
                more);
    }

    private List<Section> leaks() {
        List<Section> sections = new ArrayList<>();
        sections.add(new Section(
                "All together",
                "Keys shut, ends plugged, at 1 kPa.",
                List.of(new Line(
                        SealSheet.TOTAL,
                        "The whole horn",
                        "",
                        List.of(Field.typed(ReadingKind.LEAK, SealSheet.TOTAL, "", "Total, mL/s")),
                        List.of()))));
        for (LeakSite.Way way : LeakSite.Way.values()) {
            List<Line> lines = LeakSites.of(bench.keywork()).stream()
                    .filter(site -> site.way() == way)
                    .map(this::site)
                    .toList();
            if (!lines.isEmpty()) {
                sections.add(new Section(
                        OnBench.capital(way.name().toLowerCase(Locale.ROOT)) + (lines.size() == 1 ? "" : "s"),
                        OnBench.capital(way.words()) + ".",
                        lines));
            }
        }
        return sections;
    }

    private static List<Section> finish() {
        List<Line> signs = Stream.of(FinishSign.values())
                .map(sign -> new Line(
                        Pictured.id(sign),
                        OnBench.capital(sign.point()),
                        "",
                        List.of(Field.chosen(
                                ReadingKind.FINISH_SIGN,
                                FinishSign.SUBJECT,
                                sign.point(),
                                "Seen",
                                sign.words().toArray(String[]::new))),
                        List.of()))
                .toList();
        List<Line> stamps = FinishSheet.STAMPED.stream()
                .map(part -> new Line(
                        Pictured.stamp(part),
                        OnBench.capital(part),
                        "",
                        List.of(Field.typed(ReadingKind.STAMP, part, "", "Stamped")),
                        List.of()))
                .toList();
        return List.of(
                new Section("Signs of a later finish", "", signs),
                new Section("Assembly numbers", "As they stand on the metal.", stamps));
    }

    private List<Section> adhesives() {
        List<Section> sections = new ArrayList<>();
        sections.add(new Section(
                "Finish of the keys",
                "",
                List.of(new Line(
                        AdhesiveSheet.FINISH,
                        "Keys",
                        "",
                        List.of(Field.chosen(
                                ReadingKind.FINISH_SIGN,
                                AdhesiveSheet.KEYS,
                                AdhesiveSheet.FINISH,
                                "Finish",
                                Stream.of(AdhesiveRemoval.Finish.values())
                                        .map(Word::word)
                                        .toArray(String[]::new))),
                        List.of()))));
        for (boolean underPads : new boolean[] {true, false}) {
            List<Line> lines = AdhesiveSheet.batches(bench.keywork()).stream()
                    .filter(batch -> batch.underPads() == underPads)
                    .map(SheetLayout::batch)
                    .toList();
            sections.add(new Section(underPads ? "Under pads" : "Under corks and felts", "", lines));
        }
        return sections;
    }

    private static Line batch(AdhesiveSheet.Batch batch) {
        return new Line(
                batch.place(),
                batch.group().title(),
                "",
                List.of(Field.chosen(
                        ReadingKind.ADHESIVE_FOUND,
                        batch.place(),
                        "",
                        batch.places() == 1 ? "One place" : batch.places() + " places",
                        Stream.of(AdhesiveRemoval.Adhesive.values())
                                .map(Word::word)
                                .toArray(String[]::new))),
                List.of());
    }

    private Line site(LeakSite site) {
        return new Line(
                site.id(),
                OnBench.capital(site.name()),
                bench.placeAddress(site.id()),
                List.of(Field.chosen(
                        ReadingKind.LEAK_SITE,
                        site.id(),
                        "",
                        "Air",
                        LeakSheet.Found.SEALS.word(),
                        LeakSheet.Found.LEAKS.word())),
                List.of());
    }

    private String address(Key key) {
        return bench.keywork()
                .cupOf(key)
                .flatMap(bench::padOf)
                .map(Place::id)
                .map(bench::placeAddress)
                .orElse("");
    }
}
