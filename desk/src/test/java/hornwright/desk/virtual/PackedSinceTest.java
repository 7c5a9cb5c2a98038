package hornwright.desk.virtual;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Bearing;
import hornwright.bench.archive.Hand;
import hornwright.bench.archive.Integrity;
import hornwright.bench.archive.Interest;
import hornwright.bench.archive.Kind;
import hornwright.bench.archive.Means;
import hornwright.bench.archive.Method;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Origin;
import hornwright.bench.archive.Witness;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.Planner;
import hornwright.bench.survey.Chronicle;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Old pieces are thinner than they left the factory: what that does to what is called as built. */
final class PackedSinceTest {
    private static final Keywork ALTO = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
    private static final List<Place> PIECES =
            ALTO.places().where(place -> place.kind() == PlaceKind.FOOT || place.kind() == PlaceKind.GUARD);
    private static final long SERIAL = 41_000;
    private static final int WITNESSES = 3;

    /** Horns of one pattern, their feet fitted one by one, and packed since by what is common. */
    private static double built(Place place, Draw draw) {
        return Math.max(0.4, place.asBuilt().thicknessMm() + draw.normal(Spread.FOOT));
    }

    private static double packed(Place place, Draw draw) {
        boolean felt = place.asBuilt().material().contains("felt");
        return built(place, draw) * (1 - (felt ? draw.within(0.1, 0.25) : draw.within(0.03, 0.1)));
    }

    private static Plan plan(long seed) {
        List<Witness> horns = new ArrayList<>();
        List<Observation> looks = new ArrayList<>();
        for (int w = 0; w < WITNESSES; w++) {
            String horn = "w" + w;
            horns.add(new Witness(
                    horn, SERIAL - 50 + 40L * w, ALTO.voice(), ALTO.maker(), "", null, Integrity.ORIGINAL, Map.of()));
            for (Place place : PIECES) {
                Draw draw = Draw.of(seed, horn + place.id());
                looks.add(look(horn, place, packed(place, draw) + draw.normal(0.05)));
            }
        }
        Archive archive = new Archive(ALTO.maker(), horns, looks, List.of(), List.of(), Map.of());
        PlanInputs bare = PlanInputs.of(ALTO);
        List<String> ids = PIECES.stream().map(Place::id).toList();
        return Planner.plan(new PlanInputs(
                ALTO,
                SERIAL,
                bare.agreed(),
                bare.stage(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Chronicle.NONE,
                archive.asBuilt(ALTO.voice(), SERIAL, ids),
                bare.stock(),
                bare.rules()));
    }

    private static Observation look(String horn, Place place, double measured) {
        String id = horn + place.id();
        return new Observation(
                id,
                horn,
                place.id(),
                place.asBuilt().material(),
                null,
                measured,
                null,
                null,
                null,
                new Means.Examined(Method.MEASURED, true),
                Hand.FIRST,
                Bearing.DIRECT,
                new Origin(id, Kind.OBJECT),
                Interest.NEUTRAL,
                "bench book, " + id,
                null);
    }

    @Test
    void the_thickness_reckoned_back_holds_the_truth_and_the_measured_one_is_too_thin() {
        Coverage coverage = new Coverage();
        double tooThin = 0;
        int pieces = 0;
        for (int seed = 1; seed <= 60; seed++) {
            Plan plan = plan(seed);
            for (Place place : PIECES) {
                double truth = built(place, Draw.of(seed, "this horn " + place.id()));
                var number = plan.number(place.id(), NumberName.AS_BUILT).orElseThrow();
                coverage.add("as built", number.value(), number.u(), truth);
                var asBuilt = plan.place(place.id()).asBuilt();
                assertThat(asBuilt.atLeast()).isTrue();
                Double measured = asBuilt.thicknessMm();
                tooThin += truth - (measured == null ? 0 : measured);
                pieces++;
            }
        }
        assertThat(pieces).isGreaterThan(1000);
        assertThat(tooThin / pieces).isGreaterThan(0.1);
        assertThat(coverage.tallies().get("as built"))
                .satisfies(tally -> assertThat(tally.share()).isBetween(0.93, 0.97))
                .satisfies(tally -> assertThat(Math.abs(tally.bias())).isLessThan(0.2));
    }
}
