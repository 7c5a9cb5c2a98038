package hornwright.desk.virtual;

import hornwright.bench.horn.StopKind;

/** Corks one stop: cut full, mounted, the height read, sanded down by reckoning until it is near what is wanted. */
final class Footing {
    private static final int MOST_PASSES = 12;

    /**
     * What a way of working says of a foot.
     *
     * @param cut thickness the piece is cut to
     * @param ratio rise of the front edge for each millimetre that comes off
     * @param target front height wanted
     */
    record Intent(double cut, double ratio, double target) {}

    /** @param off true front height minus what was wanted, mm; {@code first}: as first mounted */
    record Footed(String cup, int passes, int reworks, double minutes, double first, double off) {}

    private final VirtualCup cup;
    private final Instruments with;
    private final Draw draw;
    private final double others;
    private double piece;
    private double minutes = 2 * Hand.SANDING_MIN;
    private int passes;
    private int reworks;

    private Footing(VirtualCup cup, Instruments with, Draw draw) {
        this.cup = cup;
        this.with = with;
        this.draw = draw;
        this.others = cup.layers().stream()
                .skip(1)
                .mapToDouble(layer -> layer.layer().thicknessMm() + draw.normal(Hand.CUT_MM))
                .sum();
    }

    static Footed foot(VirtualHorn horn, VirtualCup cup, Intent intent, Instruments with) {
        return new Footing(cup, with, Draw.of(horn.seed(), "foot " + cup.cup().id())).done(intent);
    }

    /** The usual way: the nominal thickness of the model, cut full, and the rule of thumb. */
    static Intent usual(VirtualCup cup) {
        boolean guard = cup.key().stop().kind() == StopKind.GUARD;
        return new Intent(
                cup.layers().getFirst().layer().thicknessMm() + Baseline.LEFT_FULL_MM,
                guard ? Baseline.GUARD_RATIO : Baseline.FOOT_RATIO,
                cup.cup().heightFrontMm());
    }

    private Footed done(Intent intent) {
        piece = Math.max(0, intent.cut() + draw.normal(Hand.CUT_MM));
        double first = height() - intent.target();
        double read = with.wedge(height());
        while (Math.abs(read - intent.target()) > Baseline.HEIGHT_NEAR_MM && passes + reworks < MOST_PASSES) {
            if (read > intent.target()) {
                read = (read + with.wedge(height())) / 2;
            }
            if (Math.abs(read - intent.target()) > Baseline.HEIGHT_NEAR_MM) {
                work((intent.target() - read) / intent.ratio());
                read = with.wedge(height());
            }
        }
        return new Footed(cup.cup().id(), passes, reworks, minutes, first, height() - intent.target());
    }

    /** Before a foot that is too thin comes off, the height was read a second time. */
    private void work(double off) {
        if (off > 0) {
            sand(Hand.SANDS_PART * off);
        } else {
            again(-off);
        }
    }

    private double height() {
        return cup.front(piece + others);
    }

    private void sand(double off) {
        piece = Math.max(0, piece - off * (1 + draw.normal(Hand.SANDS_SHARE)));
        passes++;
        minutes += Hand.SANDING_MIN;
    }

    /** Sanded too far, or cut too thin: a new piece, thicker by what is missing. */
    private void again(double more) {
        piece += more + draw.normal(Hand.CUT_MM);
        reworks++;
        minutes += Hand.FOOT_AGAIN_MIN;
    }
}
