package hornwright.bench.archive;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.horn.Voice;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Where one more look tells most, against trying every gap. */
class NextLookTest {
    private static final int ARCHIVES = 60;
    private static final Means HELD = new Means.Examined(Method.MEASURED, true);

    /** A material that changes somewhere, with now and then a horn that shows another. */
    private static PlaceArchive archive(Random random) {
        int horns = 4 + random.nextInt(12);
        long change = 38_000L + random.nextInt(6_000);
        List<Witness> witnesses = new ArrayList<>();
        List<PlaceArchive.Look> looks = new ArrayList<>();
        for (int i = 0; i < horns; i++) {
            long serial = 38_000L + random.nextInt(6_000);
            Witness witness =
                    new Witness("w-" + i, serial, Voice.ALTO, "Tarrant & Loe", "", null, Integrity.ORIGINAL, Map.of());
            witnesses.add(witness);
            boolean later = serial > change ^ random.nextInt(9) == 0;
            looks.add(new PlaceArchive.Look(seen(i, later ? "felt" : "cork"), witness));
        }
        return new PlaceArchive("foot.d", witnesses, looks, List.of(), List.of(), null, new Answers());
    }

    private static Observation seen(int i, String material) {
        return new Observation(
                "o-" + i,
                "w-" + i,
                "foot.d",
                material,
                null,
                null,
                null,
                null,
                null,
                HELD,
                Hand.FIRST,
                Bearing.DIRECT,
                new Origin("horn " + i, Kind.OBJECT),
                Interest.NEUTRAL,
                "page " + i,
                null);
    }

    @Test
    void leaving_out_gaps_that_can_teach_little_loses_nothing() {
        Random random = new Random(20_26);
        int found = 0;
        for (int n = 0; n < ARCHIVES; n++) {
            PlaceArchive place = archive(random);
            long serial = 38_000L + random.nextInt(6_000);
            Optional<NextLook> best = NextLook.best(place, serial);
            if (best.isPresent()) {
                double everyGap = NextLook.gaps(place, serial).stream()
                        .mapToDouble(gap -> gain(place, serial, NextLook.middle(gap)))
                        .max()
                        .orElseThrow();
                assertThat(best.get().gain()).isEqualTo(everyGap);
                found++;
            }
        }
        assertThat(found).isGreaterThan(ARCHIVES / 3);
    }

    private static double gain(PlaceArchive place, long serial, long probe) {
        Map<String, Double> likely = place.likely(List.of(probe)).getFirst();
        double now = NextLook.doubt(place.chances(serial, List.of()));
        return now - NextLook.after(place, serial, probe, likely);
    }

    @Test
    void the_most_telling_look_comes_first() {
        List<NextLook> looks = List.of(
                new NextLook("b", SerialRange.one(1), 1, 0.5),
                new NextLook("c", SerialRange.one(1), 1, 0.2),
                new NextLook("a", SerialRange.one(2), 1, 0.5));
        assertThat(looks.stream().sorted(NextLook.MOST_TELLING_FIRST).map(NextLook::place))
                .containsExactly("c", "a", "b");
    }
}
