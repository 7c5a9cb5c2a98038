package hornwright.desk.web.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.sound.SoundAnswer.Known;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.Written;
import java.util.ArrayList;
import java.util.List;

/** What the air column of one horn is made of, item by item: measured, fitted, or of the pattern. */
final class KnownRows {
    private static final int NAMED = 6;

    private final OnBench bench;
    private final Known known;
    private final boolean fitted;
    private final double bellMm;

    KnownRows(OnBench bench, Known known, boolean fitted, double bellMm) {
        this.bench = bench;
        this.known = known;
        this.fitted = fitted;
        this.bellMm = bellMm;
    }

    List<SoundPage.KnownLine> lines() {
        List<SoundPage.KnownLine> lines = new ArrayList<>();
        lines.add(cups("Heights of the cups as it was played", known.heights()));
        lines.add(cups("Diameters of the holes", known.holes()));
        lines.add(cups("Axis to centre", known.arms()));
        String few = "eight notes of a play test are needed to fit it";
        lines.add(new SoundPage.KnownLine(
                "Volume of mouthpiece and reed", fitted ? "fitted" : "pattern", fitted ? "see below" : few));
        lines.add(new SoundPage.KnownLine(
                "Bore wider or narrower at neck, middle and bell",
                fitted ? "fitted" : "pattern",
                fitted ? "see below; a smooth bend between the three" : few));
        lines.add(new SoundPage.KnownLine(
                "How far open holes hear each other",
                fitted ? "fitted" : "left out",
                fitted ? "so that it is not taken for bore" : ""));
        lines.add(new SoundPage.KnownLine(
                "Course of the bore, places of the holes, chimneys, rims, pads", "pattern", ""));
        lines.add(new SoundPage.KnownLine(
                "Flare of the bell",
                "your rule",
                "acts %s mm longer than waves in straight tubes say; one correction, felt in the lowest two or three notes"
                        .formatted(Written.plain(bellMm))));
        return lines;
    }

    private SoundPage.KnownLine cups(String item, List<Cup> measured) {
        int all = bench.keywork().cups().size();
        if (measured.isEmpty()) {
            return new SoundPage.KnownLine(item, "pattern", "none measured on this horn");
        }
        if (measured.size() == all) {
            return new SoundPage.KnownLine(item, "measured", "all " + all);
        }
        List<Cup> others = bench.keywork().cups().where(cup -> !measured.contains(cup));
        boolean fewer = measured.size() <= others.size();
        String named = named(fewer ? measured : others);
        String which = fewer
                ? "measured: %s; the other %d of the pattern".formatted(named, others.size())
                : "%d measured; of the pattern: %s".formatted(measured.size(), named);
        return new SoundPage.KnownLine(item, "measured and pattern", which);
    }

    private String named(List<Cup> cups) {
        List<String> names = cups.stream()
                .limit(NAMED)
                .map(cup -> bench.keywork().nameOf(cup).display())
                .toList();
        int more = cups.size() - names.size();
        return String.join(", ", names) + (more > 0 ? " and %d more".formatted(more) : "");
    }
}
