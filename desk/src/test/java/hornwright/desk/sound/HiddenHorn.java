package hornwright.desk.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.ToneHole;
import hornwright.bench.sound.BoreFit;
import hornwright.bench.sound.HornAir;
import hornwright.bench.sound.HornShape;
import hornwright.bench.sound.SoundAnswer.ChangeLine;
import hornwright.bench.sound.WrittenNote;
import hornwright.bench.survey.HeardBy;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PlayTest;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.engines.air.Air;
import hornwright.engines.air.AirColumn;
import hornwright.engines.air.AirInput;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;

/**
 * A horn whose bore, mouthpiece, heights and holes nobody sees: only what a wedge reads and what a player makes of it comes
 * out. Its open holes hear each other, which the program leaves out; each note is off by something no model knows, and pad
 * heights do a little more or less than an air column says.
 */
final class HiddenHorn {
    private static final double REFERENCE = 440;
    private static final double WEDGE_MM = 0.2;
    private static final double PLAYER_CENTS = 3;
    /** A cup that reads this close to its height is left alone. */
    private static final double LEFT_MM = 0.05;

    private final Keywork keywork;
    private final Air air;
    private final SplittableRandom dice;
    private final BoreFit truth;
    private final Map<String, Double> heights = new HashMap<>();
    private final Map<String, Double> holes = new HashMap<>();
    private final double[] own;
    private final double times;
    private final double[] before;
    private final Map<String, Double> read = new HashMap<>();

    /** @param seed any; neighbouring seeds are mixed first, since the plain generator begins them nearly alike */
    HiddenHorn(Keywork keywork, Air air, long seed) {
        this.keywork = keywork;
        this.air = air;
        dice = new SplittableRandom(seed);
        double volume = keywork.tube().mouthpieceVolumeMm3() * (1 + 0.15 * dice.nextGaussian());
        List<Double> shares =
                List.of(0.01 * dice.nextGaussian(), 0.01 * dice.nextGaussian(), 0.01 * dice.nextGaussian());
        truth = new BoreFit(volume, 0, shares, List.of(0.0, 0.0, 0.0), 10 * dice.nextGaussian(), 0, 0);
        for (Cup cup : keywork.cups()) {
            heights.put(cup.id(), Math.max(1, cup.heightFrontMm() + 0.3 * dice.nextGaussian()));
        }
        List<Cup> cups = keywork.cups().list();
        Cup bent = cups.get(dice.nextInt(cups.size()));
        heights.merge(bent.id(), 3 * dice.nextDouble() - 1.5, Double::sum);
        heights.compute(bent.id(), (id, mm) -> Math.max(1, Objects.requireNonNull(mm)));
        for (ToneHole hole : keywork.holes()) {
            holes.put(hole.id(), hole.diameterMm() + 0.05 * dice.nextGaussian());
        }
        own = dice.doubles(keywork.fingerings().size())
                .map(x -> 4 * dice.nextGaussian())
                .toArray();
        times = 1 + 0.1 * dice.nextGaussian();
        before = sounds();
        heights.forEach((cup, mm) -> read.put(cup, Math.max(0.5, mm + WEDGE_MM * dice.nextGaussian())));
    }

    double volumeMm3() {
        return truth.volumeMm3();
    }

    double share(int where) {
        return truth.bore().get(where);
    }

    List<Reading> readings() {
        List<Reading> readings = new ArrayList<>();
        for (Cup cup : keywork.cups()) {
            double mm = Objects.requireNonNull(read.get(cup.id()));
            readings.add(Reading.of("r." + cup.id(), ReadingKind.FRONT_HEIGHT, cup.id(), Observed.Amount.mm(mm)));
        }
        return readings;
    }

    PlayTest played() {
        List<PlayTest.Playing> notes = new ArrayList<>();
        for (int i = 0; i < before.length; i++) {
            String fingering = keywork.fingerings().list().get(i).id();
            notes.add(new PlayTest.Playing(fingering, cents(i, before) + PLAYER_CENTS * dice.nextGaussian(), null));
        }
        PlayTest.Conditions conditions = new PlayTest.Conditions("", "", null, null, REFERENCE);
        return new PlayTest("p.1", conditions, HeardBy.TYPED, notes, List.of(), Map.of(), "", null, Stage.ARRIVAL);
    }

    /**
     * Sets every cup that does not read its factory height to it, with a wedge, then those of an offer.
     *
     * @return cents of every note as they truly are: as played, with the factory heights, with the offer too
     */
    double[][] set(List<ChangeLine> offered) {
        for (Cup cup : keywork.cups()) {
            if (Math.abs(Objects.requireNonNull(read.get(cup.id())) - cup.heightFrontMm()) > LEFT_MM) {
                heights.put(cup.id(), wedged(cup.heightFrontMm()));
            }
        }
        double[] restored = sounds();
        offered.forEach(
                change -> heights.put(change.cup().id(), wedged(change.to().value())));
        return new double[][] {since(before), since(restored), since(sounds())};
    }

    private double wedged(double mm) {
        return Math.max(0.5, mm + WEDGE_MM * dice.nextGaussian());
    }

    private double[] since(double[] now) {
        double[] cents = new double[now.length];
        for (int i = 0; i < now.length; i++) {
            cents[i] = cents(i, before) + times * 1200 * Math.log(now[i] / before[i]) / Math.log(2);
        }
        return cents;
    }

    private double cents(int i, double[] hz) {
        double place = WrittenNote.place(keywork, keywork.fingerings().list().get(i), REFERENCE);
        return 1200 * Math.log(hz[i] / place) / Math.log(2) + truth.offsetCents() + own[i];
    }

    private double[] sounds() {
        AirInput horn = HornAir.of(keywork, air, new HornShape(heights, holes, Map.of(), 0, truth));
        AirInput outdoors = new AirInput(
                horn.air(),
                horn.bore(),
                horn.mouthpiece(),
                horn.bell(),
                horn.holes(),
                horn.fingerings(),
                horn.leaks(),
                true,
                true,
                1,
                false,
                null);
        return AirColumn.resonances(outdoors).fingerings().stream()
                .mapToDouble(
                        voicing -> Objects.requireNonNull(voicing.sounding()).frequency())
                .toArray();
    }
}
