package hornwright.desk.use;

import hornwright.bench.bounce.CountedBounces;
import hornwright.bench.bounce.OpeningKey;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.job.Job;
import hornwright.bench.job.MaterialTested;
import hornwright.bench.job.StreamName;
import hornwright.bench.material.BenchTest;
import hornwright.bench.material.BounceTest;
import hornwright.bench.material.Fit;
import hornwright.bench.material.Materials;
import hornwright.bench.material.Sheet;
import hornwright.desk.json.BadInput;
import hornwright.engines.quantity.Outcome;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Keeps a test of a material at the shop's own bench; what it gave outranks typical figures from then on. */
public record TestMaterial(Shop shop) {
    public Saved keep(Form form, BenchTest test) {
        told(test.fits(shop.house().state().materials()));
        return shop.save(
                StreamName.RULES, form, new MaterialTested(UUID.randomUUID().toString(), test));
    }

    /** What a key of that horn, pressed shut and let go, showed: its rebounds counted, each time. */
    public Saved counted(Form form, Job job, String keyId, List<Sheet> underFoot, List<Integer> counts) {
        Keywork keywork = Keyworks.of(job);
        Key key = keywork.keys().get(keyId);
        Materials materials = shop.house().state().materials();
        Optional<OpeningKey> opening =
                OpeningKey.of(keywork, key, materials).map(one -> underFoot.isEmpty() ? one : one.on(underFoot));
        if (opening.isEmpty()) {
            throw new BadInput("/key", "no spring opens " + key.name().display(), "\"a\"");
        }
        Fit fit = told(new CountedBounces(opening.get(), counts).restitution(materials));
        String words = "%s of %s".formatted(key.name().display(), name(job));
        return keep(form, new BounceTest(fit.material(), words, counts, fit.value(), fit.u()));
    }

    private static String name(Job job) {
        return (job.identity().maker() + " " + job.identity().inWords()).strip();
    }

    private static <T> T told(Outcome<T> outcome) {
        return switch (outcome) {
            case Outcome.Computed<T> had -> had.value();
            case Outcome.Missing<T> missing -> throw unclear(String.join(", ", missing.wouldDecide()));
            case Outcome.NotApplicable<T> not -> throw unclear(not.why());
            case Outcome.Failed<T> failed -> throw unclear(failed.where());
        };
    }

    private static BadInput unclear(String advice) {
        return new BadInput("/test", "this test tells nothing yet; wanted: " + advice, "free 3.02, loaded 2.61");
    }
}
