package hornwright.bench.archive.truth;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** An invented factory: what it put in one place, serial by serial. */
final class Factory {
    static final long FIRST = 38_000;
    static final long LAST = 61_000;
    static final List<String> MATERIALS = List.of("cork", "felt", "leather", "rubber");

    /** How the factory behaved, or how its horns came down to us. The model behind the archive does not assume the last four. */
    enum Habit {
        ONE_MATERIAL,
        CHANGES,
        OVERLAPS,
        THREE_AT_ONCE,
        RETURNS,
        MOSTLY_ONE,
        /** One material gives way to another little by little over 8,000 serials. */
        SLIDES,
        /** Every fourth horn was repaired with cork and passes for original. */
        REPAIRED,
        /** As many reports at second hand as looks, most of them wrong and all copied twice. */
        HEARSAY,
        /** Whole days with the one, then with the other: neighbours are alike. */
        BY_BATCH
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
            case CHANGES, REPAIRED, HEARSAY -> {
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
                double share = 0.2 + 0.6 * random.nextDouble();
                periods.add(new Period(from, new double[] {1 - share, share, 0, 0}));
                periods.add(new Period(from + 3000, only(1)));
            }
            case THREE_AT_ONCE -> {
                double[] parts = {0.1 + random.nextDouble(), 0.1 + random.nextDouble(), 0.1 + random.nextDouble()};
                double all = parts[0] + parts[1] + parts[2];
                periods.add(new Period(FIRST, new double[] {parts[0] / all, parts[1] / all, parts[2] / all, 0}));
            }
            case RETURNS -> {
                long from = random.nextLong(FIRST + 3000, LAST - 9000);
                periods.add(new Period(FIRST, only(0)));
                periods.add(new Period(from, only(1)));
                periods.add(new Period(from + 6000, only(0)));
            }
            case SLIDES -> {
                long from = random.nextLong(FIRST + 2000, LAST - 10_000);
                periods.add(new Period(FIRST, only(0)));
                for (int tenth = 1; tenth <= 10; tenth++) {
                    periods.add(new Period(from + 800L * tenth, new double[] {1 - tenth / 10.0, tenth / 10.0, 0, 0}));
                }
            }
            case BY_BATCH -> {
                for (long from = FIRST; from < LAST; from += 50 + random.nextInt(300)) {
                    periods.add(new Period(from, only(random.nextInt(2))));
                }
            }
            case MOSTLY_ONE -> {
                double rare = 0.05 + 0.2 * random.nextDouble();
                periods.add(new Period(FIRST, new double[] {1 - rare, rare, 0, 0}));
            }
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
        return switch (habit) {
                    case CHANGES, RETURNS, REPAIRED, HEARSAY -> true;
                    default -> false;
                }
                ? periods.stream().skip(1).map(Period::from).toList()
                : List.of();
    }

    /** Share of horns with an old repair that passes for original. */
    double repaired() {
        return habit == Habit.REPAIRED ? 0.25 : 0.03;
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
