package hornwright.bench.archive.truth;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** An invented factory: what it put in one place, serial by serial. */
final class Factory {
    static final long FIRST = 38_000;
    static final long LAST = 61_000;
    static final List<String> MATERIALS = List.of("cork", "felt", "leather", "rubber");

    /** How the factory behaved. The model behind the archive assumes only the first two. */
    enum Habit {
        ONE_MATERIAL,
        CHANGES,
        OVERLAPS,
        THREE_AT_ONCE,
        RETURNS,
        MOSTLY_ONE
    }

    /** From this serial on the shares of each material. */
    private record Period(long from, double[] shares) {}

    private final Habit habit;
    private final List<Period> periods;
    private final Random random;

    private Factory(Habit habit, List<Period> periods, Random random) {
        this.habit = habit;
        this.periods = periods;
        this.random = random;
    }

    static Factory invent(Habit habit, Random random) {
        List<Period> periods = new ArrayList<>();
        switch (habit) {
            case ONE_MATERIAL -> periods.add(new Period(FIRST, only(0)));
            case CHANGES -> {
                int changes = 1 + random.nextInt(3);
                long[] at = random.longs(changes, FIRST + 1000, LAST - 1000)
                        .sorted()
                        .toArray();
                periods.add(new Period(FIRST, only(0)));
                for (int i = 0; i < changes; i++) {
                    periods.add(new Period(at[i], only(i + 1)));
                }
            }
            case OVERLAPS -> {
                long from = random.nextLong(FIRST + 3000, LAST - 6000);
                periods.add(new Period(FIRST, only(0)));
                periods.add(new Period(from, new double[] {0.5, 0.5, 0, 0}));
                periods.add(new Period(from + 3000, only(1)));
            }
            case THREE_AT_ONCE -> periods.add(new Period(FIRST, new double[] {0.4, 0.35, 0.25, 0}));
            case RETURNS -> {
                long from = random.nextLong(FIRST + 3000, LAST - 9000);
                periods.add(new Period(FIRST, only(0)));
                periods.add(new Period(from, only(1)));
                periods.add(new Period(from + 6000, only(0)));
            }
            case MOSTLY_ONE -> periods.add(new Period(FIRST, new double[] {0.85, 0.15, 0, 0}));
        }
        return new Factory(habit, periods, random);
    }

    Habit habit() {
        return habit;
    }

    /** What left the factory at this serial: one draw from its shares. */
    String make(long serial) {
        double[] shares = at(serial);
        double u = random.nextDouble();
        int k = 0;
        while (k < shares.length - 1 && u >= shares[k]) {
            u -= shares[k++];
        }
        return MATERIALS.get(k);
    }

    /** Serials at which one material gave way to another for good; empty when shares were mixed. */
    List<Long> sharpChanges() {
        return habit == Habit.CHANGES || habit == Habit.RETURNS
                ? periods.stream().skip(1).map(Period::from).toList()
                : List.of();
    }

    private double[] at(long serial) {
        double[] shares = periods.getFirst().shares();
        for (Period period : periods) {
            shares = serial >= period.from() ? period.shares() : shares;
        }
        return shares;
    }

    private static double[] only(int material) {
        double[] shares = new double[MATERIALS.size()];
        shares[material] = 1;
        return shares;
    }
}
