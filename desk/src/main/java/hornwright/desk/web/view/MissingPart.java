package hornwright.desk.web.view;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Fits;
import hornwright.bench.archive.Interchange;
import hornwright.bench.horn.Place;
import hornwright.bench.plan.Found;
import hornwright.bench.survey.Condition;
import hornwright.bench.survey.Originality;
import java.util.ArrayList;
import java.util.List;

/**
 * A place where something is missing, with the best that is known to fit there.
 *
 * @param address where all that fits is told, and what could lie there instead
 */
public record MissingPart(String name, String fits, String address) {
    /** Every place somebody looked at and found bare, in the order of the keywork. */
    public static List<MissingPart> of(OnBench bench, Archive archive) {
        Interchange interchange = new Interchange(archive);
        List<MissingPart> missing = new ArrayList<>();
        for (Place place : bench.keywork().places()) {
            if (bench.planned(place).map(planned -> isMissing(planned.found())).orElse(false)) {
                List<Fits> fits = interchange.at(
                        bench.job().identity().voice(),
                        place.id(),
                        bench.job().identity().serial());
                missing.add(new MissingPart(
                        OnBench.capital(place.display()),
                        fits.isEmpty() ? "" : words(fits.getFirst()),
                        bench.address("instead/" + place.id())));
            }
        }
        return missing;
    }

    private static boolean isMissing(@org.jspecify.annotations.Nullable Found found) {
        return found != null
                && !found.byGroup()
                && (found.condition() == Condition.MISSING || found.originality() == Originality.MISSING);
    }

    private static String words(Fits fits) {
        return "%s (%c · %s)"
                .formatted(
                        FitRows.part(fits.about()),
                        fits.grading().grade().letter(),
                        fits.grading().grade().word());
    }
}
