package hornwright.bench.plan.origin;

import hornwright.bench.archive.Grade;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** What the owner should be told, most weighty first: what changes the worth of a horn, and what nobody can know. */
final class ForOwner {
    private ForOwner() {}

    static List<String> of(List<String> stamps, List<OriginLine> lines, int byGroupOnly) {
        List<String> told = new ArrayList<>();
        if (!stamps.isEmpty()) {
            told.add("Parts carry different numbers: this may be one horn made of two");
        }
        add(told, lines, Verdict.LATER, "is later work", "are later work", "and not what left the factory");
        add(told, lines, Verdict.MISSING, "is missing", "are missing", "and will be replaced by something new");
        add(
                told,
                lines,
                Verdict.DIFFERS,
                "differs",
                "differ",
                "from what such horns likely had, and nobody has judged it");
        add(
                told,
                lines,
                Verdict.DOUBTED,
                "looks original",
                "look original",
                "but such horns likely had another material: either the archive has a gap here, or an old repair passes");
        add(
                told,
                lines,
                Verdict.CONTESTED,
                "looks original",
                "look original",
                "and what the factory used there is contested: it stays open");
        int unknown = places(lines, Verdict.UNTOLD) + places(lines, Verdict.AGREES) + byGroupOnly;
        if (unknown > 0) {
            told.add("Of %d %s nobody has said whether the piece itself is original"
                    .formatted(unknown, unknown == 1 ? "place" : "places"));
        }
        weakest(lines, Verdict.BORNE_OUT)
                .ifPresent(grade -> told.add(
                        grade == Grade.ESTABLISHED
                                ? "What is called original is borne out by evidence that stands established"
                                : "What is called original is likely so: the evidence from other horns is %s at the least"
                                        .formatted(grade.word())));
        return told;
    }

    private static void add(
            List<String> told, List<OriginLine> lines, Verdict verdict, String one, String several, String why) {
        int places = places(lines, verdict);
        if (places > 0) {
            told.add("%d %s %s (%s), %s"
                    .formatted(
                            places,
                            places == 1 ? "place" : "places",
                            places == 1 ? one : several,
                            String.join(
                                    "; ",
                                    lines.stream()
                                            .filter(line -> line.verdict() == verdict)
                                            .map(OriginLine::what)
                                            .toList()),
                            why));
        }
    }

    private static int places(List<OriginLine> lines, Verdict verdict) {
        return lines.stream()
                .filter(line -> line.verdict() == verdict)
                .mapToInt(line -> line.places().size())
                .sum();
    }

    private static Optional<Grade> weakest(List<OriginLine> lines, Verdict verdict) {
        return lines.stream()
                .filter(line -> line.verdict() == verdict)
                .map(OriginLine::grade)
                .filter(Objects::nonNull)
                .max(Comparator.naturalOrder());
    }
}
