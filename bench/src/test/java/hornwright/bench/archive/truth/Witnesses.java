package hornwright.bench.archive.truth;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Bearing;
import hornwright.bench.archive.Hand;
import hornwright.bench.archive.Integrity;
import hornwright.bench.archive.Interest;
import hornwright.bench.archive.Means;
import hornwright.bench.archive.Method;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Origin;
import hornwright.bench.archive.Witness;
import hornwright.bench.horn.Voice;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Invented horns somebody looked at: most show what the factory did, some an old repair that passes for original. */
final class Witnesses {
    static final String PLACE = "foot.d";
    /** What later repairers commonly use. */
    private static final String REPAIR = "cork";

    private final List<Witness> horns = new ArrayList<>();
    private final List<Observation> looks = new ArrayList<>();
    /** How many of the horns somebody has really looked at; reports follow. */
    private int seen;

    static Witnesses look(Factory factory, int number, double repaired, Random random) {
        Witnesses all = new Witnesses();
        for (int i = 0; i < number; i++) {
            long serial = random.nextLong(Factory.FIRST, Factory.LAST);
            String made = factory.make(serial);
            boolean repair = random.nextDouble() < repaired;
            all.add(serial, repair ? REPAIR : made, random.nextBoolean());
        }
        all.seen = number;
        if (factory.habit() == Factory.Habit.HEARSAY) {
            for (int i = 0; i < number; i++) {
                all.hear(factory, random);
            }
        }
        return all;
    }

    /** Some horns soundly looked at, at one place of a family. */
    void lookAt(String place, Factory factory, int number, Random random) {
        for (int i = 0; i < number; i++) {
            long serial = random.nextLong(Factory.FIRST, Factory.LAST);
            String id = "w" + horns.size();
            add(id, serial, place, factory.make(serial), new Means.Examined(Method.SEEN, true), Hand.FIRST, id);
        }
    }

    /** A report at second hand, wrong two times in three, and two copies of it that name their source. */
    private void hear(Factory factory, Random random) {
        long serial = random.nextLong(Factory.FIRST, Factory.LAST);
        boolean wrong = random.nextInt(3) > 0;
        String material = wrong ? Factory.MATERIALS.get(random.nextInt(2)) : factory.make(serial);
        String first = "w" + horns.size();
        for (int copy = 0; copy < 3; copy++) {
            String id = "w" + horns.size();
            add(id, serial, PLACE, material, new Means.Told(false), Hand.SECOND, first);
        }
    }

    /** The same witnesses and one more horn, soundly looked at. */
    Witnesses and(long serial, String material) {
        Witnesses more = new Witnesses();
        more.horns.addAll(horns);
        more.looks.addAll(looks);
        more.add(serial, material, true);
        return more;
    }

    Archive archive() {
        return new Archive("Tarrant & Loe", horns, looks, List.of(), List.of(), Map.of());
    }

    /** What the horn nearest to this serial showed. */
    String nearest(long serial) {
        int best = 0;
        for (int i = 1; i < seen; i++) {
            boolean nearer = Math.abs(horns.get(i).serial() - serial)
                    < Math.abs(horns.get(best).serial() - serial);
            best = nearer ? i : best;
        }
        return looks.get(best).material();
    }

    private void add(long serial, String material, boolean measured) {
        String id = "w" + horns.size();
        Means means = new Means.Examined(measured ? Method.MEASURED : Method.SEEN, true);
        add(id, serial, PLACE, material, means, Hand.FIRST, id);
    }

    private void add(String id, long serial, String place, String material, Means means, Hand hand, String origin) {
        horns.add(new Witness(id, serial, Voice.ALTO, "Tarrant & Loe", "", null, Integrity.ORIGINAL, Map.of()));
        looks.add(new Observation(
                "o" + id,
                id,
                place,
                material,
                null,
                null,
                null,
                null,
                null,
                means,
                hand,
                Bearing.DIRECT,
                new Origin(origin, means.kind()),
                Interest.NEUTRAL,
                citation(id),
                null));
    }

    private static @Nullable String citation(String id) {
        return "bench book, " + id;
    }
}
