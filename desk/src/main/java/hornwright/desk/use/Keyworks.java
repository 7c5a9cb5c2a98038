package hornwright.desk.use;

import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Switches;
import hornwright.bench.horn.Voice;
import hornwright.bench.horn.variant.Variants;
import hornwright.bench.job.Identity;
import hornwright.bench.job.Job;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Faults;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The keyworks jobs are planned by, each read once. */
public final class Keyworks {
    private static final Map<String, Optional<Keywork>> READ = new ConcurrentHashMap<>();

    private static final Map<String, Map<Switches, Keywork>> DERIVED = new ConcurrentHashMap<>();

    private Keyworks() {}

    /** The keywork of this id, or {@link BadInput} with the ids there are. */
    public static Keywork named(String id) {
        return READ.computeIfAbsent(id, KeyworkFile::shipped)
                .orElseThrow(() -> new BadInput(
                        "/keywork",
                        "there is no keywork \"" + id + "\"",
                        "one of " + String.join(", ", KeyworkFile.SHIPPED)));
    }

    /** The first keywork of this voice the program ships with. */
    public static Optional<Keywork> ofVoice(Voice voice) {
        return KeyworkFile.SHIPPED.stream()
                .map(Keyworks::named)
                .filter(keywork -> keywork.voice() == voice)
                .findFirst();
    }

    /** The keywork of the job, with the switches the horn really has. */
    public static Keywork of(Job job) {
        return of(job.identity());
    }

    /** {@link BadInput} with every switch that cannot be had from the keywork. */
    public static Keywork of(Identity identity) {
        Keywork base = named(identity.keywork());
        if (base.switches().equals(identity.switches())) {
            return base;
        }
        Faults faults = new Faults();
        Variants.refusals(base, identity.switches())
                .forEach(refusal -> faults.add("/switches", refusal, "the switches of " + base.id()));
        faults.refuseIfAny();
        return DERIVED.computeIfAbsent(identity.keywork(), key -> new ConcurrentHashMap<>())
                .computeIfAbsent(identity.switches(), switches -> Variants.of(base, switches));
    }
}
