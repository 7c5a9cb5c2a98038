package hornwright.desk.web.shop;

import hornwright.bench.archive.FitKind;
import hornwright.bench.archive.Fitting;
import hornwright.bench.archive.Interchange;
import hornwright.bench.job.Archives;
import hornwright.bench.stock.StockItem;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Writes where goods on the shelf are said to fit: those of the size that decides. */
public final class StockFits {
    /** Sizes nearer than this are one. */
    private static final double SAME_MM = 0.005;

    private StockFits() {}

    /** "fits 6 places: C · indicated", or nothing. */
    public static String of(StockItem item, Archives archives) {
        return kind(item)
                .map(kind -> archives.byMaker().values().stream()
                        .flatMap(archive -> new Interchange(archive).all().stream())
                        .filter(fits -> fits.about().kind() == kind && isOfSize(fits.about(), item.diameterMm()))
                        .map(fits -> "%s: %d places, %c · %s"
                                .formatted(
                                        fits.about().part(),
                                        fits.about().places().size(),
                                        fits.grading().grade().letter(),
                                        fits.grading().grade().word()))
                        .collect(Collectors.joining("; ")))
                .orElse("");
    }

    private static Optional<FitKind> kind(StockItem item) {
        return switch (item.kind()) {
            case PAD -> Optional.of(FitKind.PAD);
            case NEEDLE_SPRING, FLAT_SPRING -> Optional.of(FitKind.SPRING);
            default -> Optional.empty();
        };
    }

    private static boolean isOfSize(Fitting fitting, @Nullable Double size) {
        Double wanted = fitting.sizeMm();
        return wanted != null && size != null && Math.abs(wanted - size) < SAME_MM;
    }
}
