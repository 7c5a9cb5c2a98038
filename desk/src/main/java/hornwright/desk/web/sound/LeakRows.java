package hornwright.desk.web.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Fingering;
import hornwright.bench.plan.Reasons;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.sound.LeakAnswer;
import hornwright.bench.sound.LeakAnswer.SuspectLine;
import hornwright.bench.sound.LeakSuspects;
import hornwright.bench.sound.WrittenNote;
import hornwright.bench.survey.PlayTest;
import hornwright.bench.survey.Symptom;
import hornwright.desk.use.HearHorn;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Miniature;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PlacePanel;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What the player says and where it points, as a page shows it. */
public final class LeakRows {
    private static final int FILLED = 3;
    private static final int NAMED = 6;

    /** What is asked about a leak at one pad. */
    public record Asked(Cup cup, double sizeMm) {
        /** Nothing when the words name no cup of the horn or no size that is reckoned. */
        public static Optional<Asked> of(OnBench bench, @Nullable String cup, @Nullable String size) {
            if (cup == null || !bench.keywork().cups().contains(cup)) {
                return Optional.empty();
            }
            double mm = LeakSuspects.sizesMm().stream()
                    .filter(one -> String.valueOf(one).equals(size))
                    .findFirst()
                    .orElse(LeakSuspects.sizesMm().get(2));
            return Optional.of(new Asked(bench.keywork().cups().get(cup), mm));
        }
    }

    private final OnBench bench;
    private final HearHorn ears;
    private final ShopRules rules;

    public LeakRows(OnBench bench, HearHorn ears, ShopRules rules) {
        this.bench = bench;
        this.ears = ears;
        this.rules = rules;
    }

    public LeakPage page(Frame frame, Supplier<String> keys, Optional<Asked> asked) {
        Optional<PlayTest> said = HearHorn.said(bench.job());
        List<SuspectLine> suspects = ears.suspects(bench.job(), bench.keywork())
                .map(LeakAnswer::suspects)
                .orElse(List.of());
        Set<String> first =
                suspects.stream().limit(FILLED).map(line -> line.cup().id()).collect(Collectors.toSet());
        return new LeakPage(
                frame,
                next(said, suspects),
                bench.id(),
                bench.history().seq(),
                keys.get(),
                boxes(said, Symptom.STUFFY),
                boxes(said, Symptom.FAILS),
                said.map(PlayWords::title).orElse(""),
                figure(first),
                suspects.stream().map(this::suspect).toList(),
                pads(asked),
                sizes(asked),
                asked.map(this::suffers).orElse(List.of()));
    }

    private Miniature figure(Set<String> first) {
        String names = bench.keywork().cups().stream()
                .filter(cup -> first.contains(cup.id()))
                .map(cup -> bench.keywork().nameOf(cup).display())
                .collect(Collectors.joining(", "));
        return Miniature.pointing(bench.keywork(), cup -> first.contains(cup.id()), "Look first at: " + names);
    }

    private Next next(Optional<PlayTest> said, List<SuspectLine> suspects) {
        if (said.isEmpty()) {
            return new Next(
                    "what the player says.", "tick every note that is stuffy or jumps.", "", "#said", "Tick them");
        }
        if (suspects.isEmpty()) {
            return new Next("nothing; every note speaks.", "", "", "", "");
        }
        String name = bench.keywork().nameOf(suspects.getFirst().cup()).display();
        return new Next("a look at the suspects.", "put the light under " + name + " first.", "", "", "");
    }

    private List<LeakPage.Box> boxes(Optional<PlayTest> said, Symptom symptom) {
        Map<String, Symptom> answers = said.map(PlayTest::answers).orElse(Map.of());
        return notes(bench).stream()
                .map(note -> new LeakPage.Box(note.id(), WrittenNote.shown(note), answers.get(note.id()) == symptom))
                .toList();
    }

    /** The notes a player is asked about: every usual fingering. */
    public static List<Fingering> notes(OnBench bench) {
        return bench.keywork().fingerings().stream().filter(Fingering::standard).toList();
    }

    private LeakPage.Suspect suspect(SuspectLine line) {
        String name = OnBench.capital(bench.keywork().nameOf(line.cup()).display());
        String more = line.takes().size() > NAMED
                ? " and %d more".formatted(line.takes().size() - NAMED)
                : "";
        String takes =
                line.takes().stream().limit(NAMED).map(WrittenNote::shown).collect(Collectors.joining(", "));
        return new LeakPage.Suspect(
                name,
                percent(name, line),
                takes.isEmpty() ? "no note much" : takes + more,
                bench.padOf(line.cup()).map(pad -> bench.placeAddress(pad.id())).orElse(""),
                bench.address("sound/leak") + "?cup=" + line.cup().id() + "#does");
    }

    private List<PlacePanel.Option> pads(Optional<Asked> asked) {
        return bench.keywork().cups().stream()
                .map(cup -> new PlacePanel.Option(
                        cup.id(),
                        bench.heading(cup),
                        asked.filter(one -> one.cup().equals(cup)).isPresent()))
                .toList();
    }

    private static List<PlacePanel.Option> sizes(Optional<Asked> asked) {
        double chosen = asked.map(Asked::sizeMm).orElse(LeakSuspects.sizesMm().get(2));
        return LeakSuspects.sizesMm().stream()
                .map(size -> new PlacePanel.Option(String.valueOf(size), size + " mm across", size == chosen))
                .toList();
    }

    /** A suspicion is no finer than whole hundredths, and often not so fine. */
    private Figure percent(String name, SuspectLine line) {
        String whole = String.valueOf(Math.round(line.share().value()));
        return new Figure(
                name,
                whole,
                "%",
                "",
                "",
                "",
                Figure.because(bench.id(), line.share().because()));
    }

    private List<LeakPage.Suffers> suffers(Asked asked) {
        Reasons reasons = new Reasons();
        return LeakAnswer.suffering(
                        bench.keywork(), rules, ears.leaks(bench.keywork()), asked.cup(), asked.sizeMm(), reasons)
                .stream()
                .map(one -> new LeakPage.Suffers(
                        WrittenNote.shown(one.fingering()),
                        Figure.of(bench.id(), "about", one.lostDb()),
                        one.says().word()))
                .toList();
    }
}
