package hornwright.desk.use;

import hornwright.bench.archive.Bearing;
import hornwright.bench.archive.Hand;
import hornwright.bench.archive.How;
import hornwright.bench.archive.Integrity;
import hornwright.bench.archive.Interest;
import hornwright.bench.archive.Kind;
import hornwright.bench.archive.Means;
import hornwright.bench.archive.Method;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Origin;
import hornwright.bench.archive.Painting;
import hornwright.bench.archive.Sight;
import hornwright.bench.archive.Witness;
import hornwright.bench.job.Edit;
import hornwright.bench.job.Job;
import hornwright.bench.job.ObservationsMade;
import hornwright.bench.job.StreamName;
import hornwright.bench.job.WitnessAdded;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.Originality;
import hornwright.desk.json.BadInput;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes what was found on a horn of the shelf a look of the archive. Only when somebody says so: findings never become
 * evidence by themselves.
 */
public record OfferFindings(Shop shop) {
    /** Places somebody judged one by one to be original, with a material, whose look the archive does not have yet. */
    public List<String> offerable(Job job) {
        Long serial = job.identity().serial();
        if (serial == null) {
            return List.of();
        }
        List<String> told = shop.archive().state().of(job.identity().maker()).observations().stream()
                .filter(look -> look.witness().equals(witnessId(job)))
                .map(Observation::place)
                .toList();
        return job.findings().places().stream()
                .filter(finding -> finding.originality() == Originality.ORIGINAL && finding.material() != null)
                .map(Finding::place)
                .filter(place -> !told.contains(place))
                .toList();
    }

    /** {@link BadInput} when one of the places has no finding with a material, or the horn has no serial. */
    public Saved offer(String jobId, Form form, Collection<String> places) {
        Job job = shop.jobNow(jobId);
        Long serial = job.identity().serial();
        if (serial == null) {
            throw new BadInput("/serial", "a horn without a serial says nothing of when", "41207");
        }
        Witness witness = witness(job, serial);
        List<Edit> edits = new ArrayList<>();
        if (known(job).isEmpty()) {
            edits.add(new WitnessAdded(witness));
        }
        edits.add(new ObservationsMade(looks(job, witness, places)));
        return shop.save(StreamName.ARCHIVE, form, edits.toArray(Edit[]::new));
    }

    private Optional<Witness> known(Job job) {
        return shop.archive().state().of(job.identity().maker()).witnesses().stream()
                .filter(witness -> witness.id().equals(witnessId(job)))
                .findFirst();
    }

    private static String witnessId(Job job) {
        return "shelf-" + job.id();
    }

    /** The horn as a whole is altered as soon as one piece of it is later work. */
    private Witness witness(Job job, long serial) {
        Map<String, String> stamps = new LinkedHashMap<>();
        boolean altered = false;
        for (Finding finding : job.findings().places()) {
            altered |= finding.originality() == Originality.LATER;
            if (finding.assemblyNumber() != null) {
                stamps.put(finding.place(), finding.assemblyNumber());
            }
        }
        Integrity integrity = altered ? Integrity.ALTERED : Integrity.UNKNOWN;
        return known(job)
                .orElse(new Witness(
                        witnessId(job),
                        serial,
                        job.identity().voice(),
                        job.identity().maker(),
                        "",
                        null,
                        integrity,
                        stamps));
    }

    private List<Observation> looks(Job job, Witness witness, Collection<String> places) {
        List<Observation> looks = new ArrayList<>();
        for (String place : places) {
            Finding finding = job.findings().places().stream()
                    .filter(one -> one.place().equals(place))
                    .findFirst()
                    .orElseThrow(() -> new BadInput("/places", "nobody judged \"" + place + "\" by itself", "foot.d"));
            String material = finding.material();
            if (material == null) {
                throw new BadInput("/places", "\"" + place + "\" has no material to tell of", "foot.d");
            }
            Sight sight = new Sight(material, finding.colour(), finding.thicknessMm(), null, null, null);
            looks.addAll(new Painting(shop.archive().state().of(witness.maker()), witness, how(job, witness, finding))
                    .of(List.of(new Painting.Stroke("found", List.of(place), sight)), null));
        }
        return looks;
    }

    private How how(Job job, Witness witness, Finding finding) {
        Method method = finding.thicknessMm() == null ? Method.SEEN : Method.MEASURED;
        String shop = this.shop.house().state().name();
        return new How(
                new Means.Examined(method, finding.originality() == Originality.ORIGINAL),
                Hand.FIRST,
                Bearing.DIRECT,
                new Origin("horn " + witness.serial() + " of job " + job.id(), Kind.OBJECT),
                Interest.NEUTRAL,
                "job %s of %s".formatted(job.id(), shop.isEmpty() ? "this shop" : shop),
                null);
    }
}
