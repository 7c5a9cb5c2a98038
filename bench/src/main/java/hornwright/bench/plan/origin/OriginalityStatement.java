package hornwright.bench.plan.origin;

import hornwright.bench.archive.Grade;
import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.Built;
import hornwright.bench.plan.Found;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlannedPlace;
import hornwright.bench.plan.Warning;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * How original a horn is, as far as somebody looked.
 *
 * @param opening the counts, in one sentence
 * @param stamps what stamped numbers say of parts from elsewhere
 * @param lines best first
 * @param byGroupOnly places somebody passed over with a group and did not judge one by one; no line speaks of them
 */
public record OriginalityStatement(String opening, List<String> stamps, List<OriginLine> lines, int byGroupOnly) {
    public OriginalityStatement {
        stamps = List.copyOf(stamps);
        lines = List.copyOf(lines);
    }

    /** What the owner should be told, most weighty first; each a sentence without its full stop. */
    public List<String> forOwner() {
        return isEmpty() ? List.of() : ForOwner.of(stamps, lines, byGroupOnly);
    }

    /** Whether anybody looked at anything. */
    public boolean isEmpty() {
        return lines.isEmpty() && stamps.isEmpty();
    }

    /** Places of one verdict and grade, and for a doubt of one material, are one line. */
    private record Said(Verdict verdict, @Nullable Grade grade, String material, boolean laterUse) {
        private static final Comparator<Said> BEST_FIRST = Comparator.comparing(Said::verdict)
                .thenComparing(said -> said.grade() == null ? Grade.NOT_ASSESSED : said.grade())
                .thenComparing(Said::material)
                .thenComparing(Said::laterUse);

        static Said of(Built built, Found found) {
            Verdict verdict = Verdict.of(built, found);
            boolean later =
                    found.material() != null && LaterUse.note(found.material()).isPresent();
            return switch (verdict) {
                case BORNE_OUT, AGREES, CONTESTED -> new Said(verdict, built.grade(), "", later);
                case DOUBTED, DIFFERS -> new Said(verdict, built.grade(), String.valueOf(built.material()), later);
                case JUDGED, UNTOLD ->
                    new Said(verdict, built.grade() == null ? Grade.NOT_ASSESSED : built.grade(), "", later);
                case LATER, MISSING -> new Said(verdict, null, "", false);
            };
        }

        String words() {
            String likely = grade == Grade.ESTABLISHED ? "" : "likely ";
            return switch (verdict) {
                case BORNE_OUT ->
                    "judged original, and of the material such horns " + likely + "left the factory with" + mark();
                case JUDGED ->
                    "judged original at the bench; what the factory used there is not known from other horns" + mark();
                case CONTESTED -> "judged original at the bench; what the factory used there is disputed" + mark();
                case DOUBTED ->
                    "judged original at the bench, but such horns " + likely + "had " + material + mark() + repairers();
                case AGREES ->
                    "of the material such horns " + likely + "left the factory with" + mark()
                            + repairers()
                            + "; whether the piece itself is original was not judged";
                case UNTOLD -> "cannot be told: not judged, and nothing to hold it against" + mark();
                case DIFFERS ->
                    "not judged; such horns " + likely + "had " + material + mark()
                            + (laterUse
                                    ? repairers() + ", so this is probably a later repair"
                                    : ", so this is a later repair, or an exception of the works");
                case LATER -> "later repairs";
                case MISSING -> "missing";
            };
        }

        private String repairers() {
            return laterUse ? "; later repairers commonly use what is there" : "";
        }

        private String mark() {
            return grade == null ? "" : " (" + grade.letter() + " · " + grade.word() + ")";
        }
    }

    public static OriginalityStatement of(Keywork keywork, Plan plan) {
        Map<Said, List<PlannedPlace>> alike = new TreeMap<>(Said.BEST_FIRST);
        int byGroup = 0;
        for (PlannedPlace place : plan.places()) {
            Found found = place.found();
            if (found != null && found.byGroup()) {
                byGroup++;
            } else if (found != null) {
                alike.computeIfAbsent(Said.of(place.asBuilt(), found), none -> new ArrayList<>())
                        .add(place);
            }
        }
        List<OriginLine> lines = new ArrayList<>();
        alike.forEach((said, places) -> lines.add(line(keywork, said, places)));
        List<String> stamps = plan.warnings().stream()
                .filter(warning -> warning.sort() == Warning.Sort.MIXED_HORN)
                .map(Warning::words)
                .toList();
        return new OriginalityStatement(opening(plan, lines), stamps, lines, byGroup);
    }

    private static OriginLine line(Keywork keywork, Said said, List<PlannedPlace> places) {
        Map<String, Long> kinds = places.stream()
                .map(place -> keywork.places().get(place.id()).kind())
                .collect(Collectors.groupingBy(kind -> kind.spoken(), LinkedHashMap::new, Collectors.counting()));
        String what = kinds.entrySet().stream()
                .map(kind -> kind.getValue() + " × " + kind.getKey())
                .collect(Collectors.joining(", "));
        return new OriginLine(
                said.verdict(),
                said.grade(),
                what,
                said.words(),
                places.stream().map(PlannedPlace::id).toList());
    }

    private static String opening(Plan plan, List<OriginLine> lines) {
        long looked = count(lines, verdict -> true);
        return "Of %d places, %d were judged one by one: %d original, %d later repairs, %d missing, %d not settled."
                .formatted(
                        plan.places().size(),
                        looked,
                        count(lines, Verdict::isJudgedOriginal),
                        count(lines, verdict -> verdict == Verdict.LATER),
                        count(lines, verdict -> verdict == Verdict.MISSING),
                        count(
                                lines,
                                verdict -> verdict == Verdict.AGREES
                                        || verdict == Verdict.DIFFERS
                                        || verdict == Verdict.UNTOLD));
    }

    private static long count(List<OriginLine> lines, Predicate<Verdict> test) {
        return lines.stream()
                .filter(line -> test.test(line.verdict()))
                .mapToLong(line -> line.places().size())
                .sum();
    }
}
