package hornwright.bench.archive;

import java.util.List;
import java.util.Random;

/** Evidence for tests: one sound item and changes to it, or items drawn by lot. */
final class Items {
    static final SerialRange SERIALS = new SerialRange(41000, 42000);
    static final Claim CLAIM = new Claim(SERIALS, "foot.d", "natural cork");

    private Items() {}

    static Evidence item(String id, Means means, String origin, Stance stance) {
        return new Evidence(
                id,
                means,
                Hand.FIRST,
                Bearing.DIRECT,
                stance,
                new Origin(origin, means.kind()),
                Interest.NEUTRAL,
                Integrity.ORIGINAL,
                SerialRange.one(41207),
                "bench book, page 1",
                null,
                null);
    }

    static Evidence supporting(Means means, String origin) {
        return item("for " + origin, means, origin, Stance.SUPPORTS);
    }

    static Evidence against(Means means, String origin) {
        return item("against " + origin, means, origin, Stance.CONTRADICTS);
    }

    /** Means whose item has this strength, sound in every other respect. */
    static Means ofStrength(int strength, int variant) {
        List<Means> all = switch (strength) {
            case 3 -> List.of(new Means.Examined(Method.MEASURED, true), new Means.Written(true));
            case 2 ->
                List.of(
                        new Means.Examined(Method.SEEN, true),
                        new Means.Pictured(true),
                        new Means.Written(false),
                        new Means.Told(true));
            case 1 -> List.of(new Means.Published(true), new Means.Examined(Method.SEEN, false));
            default -> List.of(new Means.Rumoured(), new Means.Published(false));
        };
        return all.get(Math.floorMod(variant, all.size()));
    }

    /** An item of any sort; what kind it is follows from its origin, as it must. */
    static Evidence random(String id, Random random) {
        int origin = random.nextInt(6);
        return random(id, "origin " + origin, origin % Kind.values().length, random);
    }

    static Evidence random(String id, String origin, int kind, Random random) {
        Means means = means(kind, random);
        boolean negative = random.nextInt(8) == 0;
        return new Evidence(
                id,
                means,
                pick(random, Hand.values()),
                negative ? Bearing.NEGATIVE : random.nextInt(4) == 0 ? Bearing.INDIRECT : Bearing.DIRECT,
                random.nextInt(3) == 0 ? Stance.CONTRADICTS : Stance.SUPPORTS,
                new Origin(origin, means.kind()),
                random.nextInt(5) == 0 ? pick(random, Interest.values()) : Interest.NEUTRAL,
                random.nextInt(4) == 0 ? pick(random, Integrity.values()) : Integrity.ORIGINAL,
                random.nextInt(4) == 0 ? new SerialRange(38000, 45000) : SerialRange.one(41207),
                random.nextInt(8) == 0 ? null : "page " + id,
                null,
                negative && random.nextBoolean() ? search() : null);
    }

    private static Means means(int kind, Random random) {
        return switch (kind) {
            case 0 -> new Means.Examined(pick(random, Method.values()), random.nextInt(3) > 0);
            case 1 -> new Means.Written(random.nextBoolean());
            case 2 -> new Means.Pictured(random.nextBoolean());
            case 3 -> new Means.Told(random.nextBoolean());
            case 4 -> new Means.Published(random.nextBoolean());
            default -> new Means.Rumoured();
        };
    }

    static SearchLog search() {
        return new SearchLog("bench books", Edtf.parse("2026-01"), "stack feet");
    }

    private static <T> T pick(Random random, T[] all) {
        return all[random.nextInt(all.length)];
    }
}
