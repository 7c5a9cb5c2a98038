package hornwright.bench.plan.treatment;

import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.horn.AsBuilt;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.plan.Built;
import java.util.Map;

/** What left the factory at a place: what the archive says of this serial, else the pattern of the keywork. */
final class BuiltAs {
    private BuiltAs() {}

    static Built of(Keywork keywork, Place place, Map<String, AsBuiltAt> archive) {
        AsBuiltAt known = archive.get(place.id());
        AsBuilt pattern = place.asBuilt();
        if (known == null || known.isGap()) {
            return new Built(
                    pattern.material(),
                    pattern.colour(),
                    pattern.thicknessMm() > 0 ? pattern.thicknessMm() : null,
                    false,
                    0,
                    "pattern " + keywork.id() + ", no witness",
                    false,
                    null);
        }
        return new Built(
                known.material(),
                known.colour(),
                known.thicknessAtLeastMm(),
                known.thicknessAtLeastMm() != null,
                known.examined().looked() - known.examined().exceptions(),
                known.gradeInWords(),
                true,
                known.grade());
    }
}
