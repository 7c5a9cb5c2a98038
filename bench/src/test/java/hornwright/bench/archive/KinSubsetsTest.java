package hornwright.bench.archive;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.horn.Voice;
import hornwright.engines.belief.Sighting;
import hornwright.engines.belief.WorkshopBelief;
import hornwright.engines.belief.WorkshopQuestion;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The second method: which places go together, by weighing every way of splitting the family, one after another. */
class KinSubsetsTest {
    private static final List<String> MATERIALS = List.of("cork", "felt");
    private static final double TOGETHER = 0.9;
    private static final int FAMILIES = 120;
    private static final int PLACES = 4;

    private static double evidence(List<Sighting> seen) {
        return seen.isEmpty()
                ? 0
                : WorkshopBelief.logEvidence(new WorkshopQuestion(seen, MATERIALS, Archive.ASSUMED, List.of()));
    }

    /** Places that go together in the weightiest split; every place is looked at on horns of its own. */
    private static List<String> weightiest(Map<String, List<Sighting>> looks) {
        List<String> places = List.copyOf(looks.keySet());
        List<String> best = List.of();
        double most = Double.NEGATIVE_INFINITY;
        for (int mask = 0; mask < 1 << places.size(); mask++) {
            List<String> going = new ArrayList<>();
            List<Sighting> pool = new ArrayList<>();
            double weight = 0;
            for (int i = 0; i < places.size(); i++) {
                List<Sighting> own = Objects.requireNonNull(looks.get(places.get(i)));
                if ((mask & (1 << i)) != 0) {
                    going.add(places.get(i));
                    pool.addAll(own);
                    weight += Math.log(TOGETHER);
                } else {
                    weight += Math.log(1 - TOGETHER) + evidence(own);
                }
            }
            weight += evidence(pool);
            if (weight > most) {
                most = weight;
                best = going;
            }
        }
        return best;
    }

    @Test
    void the_places_found_to_go_together_are_those_of_the_weightiest_split() {
        Random random = new Random(21);
        int asked = 0;
        int same = 0;
        for (int family = 0; family < FAMILIES; family++) {
            long change = 40_000L + random.nextInt(10_000);
            List<Witness> horns = new ArrayList<>();
            List<Observation> seen = new ArrayList<>();
            Map<String, List<Sighting>> looks = new LinkedHashMap<>();
            for (int p = 0; p < PLACES; p++) {
                String place = "foot." + p;
                long own = random.nextInt(4) == 0 ? 40_000L + random.nextInt(10_000) : change;
                List<Sighting> here = new ArrayList<>();
                for (int i = 0; i < 10; i++) {
                    long serial = 40_000L + 4L * random.nextInt(2_500) + p;
                    String material = serial < own ? "cork" : "felt";
                    String id = place + "." + i;
                    horns.add(new Witness(
                            id, serial, Voice.ALTO, "Tarrant & Loe", "", null, Integrity.ORIGINAL, Map.of()));
                    seen.add(KinTest.measured(id, id, place, material));
                    here.add(new Sighting(serial, material, 1));
                }
                looks.put(place, here);
            }
            Archive archive = new Archive("Tarrant & Loe", horns, seen, List.of(), List.of(), Map.of());
            List<String> best = weightiest(looks);
            List<String> all = new ArrayList<>(looks.keySet());
            all.add("foot.g");
            Kin kin = archive.kin(Voice.ALTO, 45_000, List.of(all)).get("foot.g");
            if (best.size() > 1) {
                asked++;
                same += kin != null && kin.others().equals(best) ? 1 : 0;
            }
        }
        assertThat(asked).isGreaterThan(FAMILIES * 3 / 4);
        assertThat(same / (double) asked).isGreaterThan(0.9);
    }
}
