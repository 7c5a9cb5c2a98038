package hornwright.desk.web.view;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Evidence;
import hornwright.bench.archive.FitKind;
import hornwright.bench.archive.Fits;
import hornwright.bench.archive.Fitting;
import hornwright.bench.archive.Interchange;
import hornwright.bench.archive.SerialRange;
import hornwright.bench.archive.Stance;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.horn.Voice;
import hornwright.desk.use.Keyworks;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Writes what fits what. */
public final class FitRows {
    private static final double LEAST_WIDTH = 0.8;

    private final Archive archive;
    private final SerialRange shown;

    public FitRows(Archive archive) {
        this.archive = archive;
        long low = archive.fittings().stream()
                .mapToLong(one -> one.evidence().serials().from())
                .min()
                .orElse(0);
        long high = archive.fittings().stream()
                .mapToLong(one -> one.evidence().serials().to())
                .max()
                .orElse(1);
        this.shown = new SerialRange(low, Math.max(high, low + 1));
    }

    /** The serials all bars run over. */
    public String axis() {
        return archive.fittings().isEmpty() ? "" : shown.inWords();
    }

    public List<FitLine> all() {
        return new Interchange(archive).all().stream().map(this::line).toList();
    }

    /** What is said to go to one place of a horn. */
    public List<FitLine> at(Voice voice, String place, @Nullable Long serial) {
        return new Interchange(archive)
                .at(voice, place, serial).stream().map(this::line).toList();
    }

    /** Whether a part of this kind goes to places painted by a stroke: "lower-stack.spring". */
    public static boolean goesTo(FitKind kind, String stroke) {
        String places = stroke.substring(stroke.indexOf('.') + 1);
        return Stream.of(PlaceKind.values()).anyMatch(place -> place.word().equals(places) && kind.goesTo(place));
    }

    /** "needle spring, blued steel, 1.07 mm". */
    static String part(Fitting fitting) {
        Double size = fitting.sizeMm();
        return size == null ? fitting.part() : fitting.part() + ", " + Written.plain(size) + " mm";
    }

    private FitLine line(Fits fits) {
        Fitting about = fits.about();
        return new FitLine(
                "fit-" + about.evidence().id().replaceAll("[^A-Za-z0-9-]", "-"),
                OnBench.capital(about.kind().word()),
                part(about),
                where(about),
                about.voice().word() + " " + fits.span().inWords(),
                GradeState.of(fits.grading().grade()),
                fits.grading().counts(),
                fits.grading().reasons(),
                fits.items().stream().map(this::said).toList());
    }

    private FitLine.Said said(Fitting item) {
        Evidence by = item.evidence();
        boolean against = by.stance() == Stance.CONTRADICTS;
        double whole = shown.to() - (double) shown.from();
        double left = 100 * (by.serials().from() - shown.from()) / whole;
        double width = 100 * (by.serials().to() - by.serials().from()) / whole;
        String cited = by.citation() == null ? "no citation, so no strength" : by.citation();
        return new FitLine.Said(
                "%s: %s, %s, %s (%s)"
                        .formatted(
                                against ? "does not fit" : "fits",
                                by.origin().id(),
                                by.kind().word(),
                                by.serials().inWords(),
                                cited),
                against,
                Math.min(left, 100 - LEAST_WIDTH),
                Math.max(width, LEAST_WIDTH));
    }

    /** "22 × pad" or the names of few places. */
    private static String where(Fitting fitting) {
        Optional<Keywork> keywork = Keyworks.ofVoice(fitting.voice());
        List<Place> places = fitting.places().stream()
                .flatMap(id -> keywork.flatMap(of -> of.places().find(id)).stream())
                .toList();
        if (places.size() <= 3) {
            return places.isEmpty()
                    ? fitting.places().size() + " places"
                    : places.stream().map(Place::display).collect(Collectors.joining(", "));
        }
        Map<PlaceKind, Integer> kinds = new TreeMap<>();
        places.forEach(place -> kinds.merge(place.kind(), 1, Integer::sum));
        return kinds.entrySet().stream()
                .map(kind -> kind.getValue() + " × " + kind.getKey().spoken())
                .collect(Collectors.joining(", "));
    }
}
