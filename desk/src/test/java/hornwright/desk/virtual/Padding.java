package hornwright.desk.virtual;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Pads one cup: picks the pad, lays the film, floats and corrects until it seals, or takes it out and begins again. */
final class Padding {
    /** Thicknesses a shop keeps, mm: thin about 4.1, full about 4.7, small ones from 2.5 (common practice). */
    static final List<Double> SHELF = List.of(2.5, 2.8, 3.0, 3.3, 3.6, 3.8, 4.1, 4.3, 4.6, 4.8, 5.0, 5.2);

    private static final int MOST_PADS = 3;

    /**
     * @param corrections of the pad that stayed
     * @param heats corrections of all pads tried
     * @param reworks pads that came out again
     * @param seals at the lightest closing in the end
     * @param atOnce sealed without a correction
     */
    record Padded(String cup, int corrections, int heats, int reworks, double minutes, boolean seals, boolean atOnce) {
        boolean atMostOneCorrection() {
            return seals && reworks == 0 && corrections <= 1;
        }
    }

    /**
     * What a way of working says of a pad before anything is glued.
     *
     * @param film to lay on; null: judged by eye at the dry fit
     */
    record Intent(
            double diameter, double thickness, @Nullable Double film) {}

    private final VirtualCup cup;
    private final Hand hand;
    private final Draw draw;
    private double minutes = Hand.PAD_MIN;
    private int heats;
    private int reworks;

    private Padding(VirtualCup cup, Hand hand, Draw draw) {
        this.cup = cup;
        this.hand = hand;
        this.draw = draw;
    }

    static Padded pad(VirtualHorn horn, VirtualCup cup, Intent intent, Hand hand) {
        return new Padding(cup, hand, Draw.of(horn.seed(), "pad " + cup.cup().id())).done(intent);
    }

    private Padded done(Intent intent) {
        double diameter = fitting(intent.diameter());
        Floating floating = float_(intent, diameter);
        boolean atOnce = floating.seals();
        int corrections = corrected(floating);
        while (!floating.seals() && reworks + 1 < MOST_PADS) {
            minutes += Hand.REWORK_MIN;
            reworks++;
            floating = again(diameter);
            corrections = corrected(floating);
        }
        return new Padded(
                cup.cup().id(), corrections, heats, reworks, minutes, floating.seals(), atOnce && reworks == 0);
    }

    /** A pad that does not go in, or leaves a ring, sends for one that does. */
    private double fitting(double wanted) {
        double over = wanted - cup.inside();
        if (over <= Baseline.TOO_WIDE_MM && over >= -Baseline.TOO_NARROW_MM) {
            return wanted;
        }
        minutes += Hand.REWORK_MIN;
        reworks++;
        return Draw.read(cup.inside(), 0.5);
    }

    private Floating float_(Intent intent, double diameter) {
        double pad = made(intent.thickness());
        Double stated = intent.film();
        if (stated != null) {
            return settled(pad, diameter, stated);
        }
        double film = filmByEye(pad);
        double nominal = intent.thickness();
        while ((film < least() || film > Baseline.FILM_MOST_MM) && step(nominal, film > least()) != nominal) {
            minutes += Hand.OTHER_PAD_MIN;
            nominal = step(nominal, film > least());
            pad = made(nominal);
            film = filmByEye(pad);
        }
        return settled(pad, diameter, film);
    }

    /** The film that the gap opposite the first touch of the dry pad asks for. */
    private double filmByEye(double pad) {
        double shy = cup.floorToRim() - pad;
        double lever = shy > 0 ? cup.arm() + cup.radius() : cup.arm() - cup.radius();
        double gap = shy * cup.hole() / lever + draw.normal(hand.eye());
        return gap * lever / cup.hole() + cup.cup().seatDepthMm();
    }

    /** The pad that came out has told the room to about what a trial pad tells. */
    private Floating again(double diameter) {
        double room = cup.room() + draw.normal(0.1);
        double wanted = room - usual();
        double nominal = SHELF.stream()
                .min(Comparator.comparingDouble(kept -> Math.abs(kept - wanted)))
                .orElseThrow();
        return settled(made(nominal), diameter, room - nominal);
    }

    private Floating settled(double pad, double diameter, double film) {
        Floating floating = new Floating(cup, pad, diameter, film, hand, draw);
        floating.settle();
        return floating;
    }

    private int corrected(Floating floating) {
        int corrections = 0;
        while (!floating.seals() && corrections < Baseline.PATIENCE) {
            boolean moved = floating.correct();
            corrections++;
            heats++;
            minutes += Hand.CORRECTION_MIN;
            if (!moved && corrections > 1) {
                break;
            }
        }
        return corrections;
    }

    private double made(double nominal) {
        return nominal + draw.within(-Spread.PAD_THICKNESS, Spread.PAD_THICKNESS);
    }

    private static double step(double nominal, boolean thicker) {
        return thicker
                ? SHELF.stream()
                        .filter(kept -> kept > nominal + 0.01)
                        .findFirst()
                        .orElse(nominal)
                : SHELF.reversed().stream()
                        .filter(kept -> kept < nominal - 0.01)
                        .findFirst()
                        .orElse(nominal);
    }

    private double least() {
        return vent() ? Baseline.VENT_FILM_LEAST_MM : Baseline.FILM_LEAST_MM;
    }

    private double usual() {
        return vent() ? Baseline.VENT_FILM_USUAL_MM : Baseline.FILM_USUAL_MM;
    }

    private boolean vent() {
        return cup.hole() < 6;
    }
}
