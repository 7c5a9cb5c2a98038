package hornwright.desk.virtual;

/**
 * A pad on its adhesive: film at the centre, and how far the pad is tilted in its cup. Pushing an edge in thins the film
 * there; the other edge stays. Lengths in mm, tilts in rad, front low and one side low positive.
 */
final class Floating {
    private final VirtualCup cup;
    private final double pad;
    private final double across;
    private final Hand hand;
    private final Draw draw;
    private double film;
    private double front;
    private double side;

    Floating(VirtualCup cup, double padThickness, double padDiameter, double film, Hand hand, Draw draw) {
        this.cup = cup;
        this.pad = padThickness;
        this.across = padDiameter;
        this.hand = hand;
        this.draw = draw;
        this.film = Math.max(Hand.THINNEST_MM, film + draw.normal(hand.laysFilm()));
        this.front = draw.normal(hand.uneven()) / across;
        this.side = draw.normal(hand.uneven()) / across;
    }

    /** How proud the pad stands at its centre. */
    double proud() {
        return film + pad - cup.room();
    }

    /** What the light shows: front edge low against the back, and one side against the other, at the rim. */
    private double frontLow() {
        return cup.radius() * (front - proud() / cup.arm());
    }

    private double sideLow() {
        return cup.radius() * (side + cup.sideTilt());
    }

    /** Moves the pad so that these come out of what the light shows; false where the film does not allow it. */
    private boolean take(double frontOut, double sideOut) {
        boolean fore = push(frontOut, true);
        boolean aside = push(sideOut, false);
        return fore && aside;
    }

    /**
     * The low edge is pushed in; where its film is spent the other edge is lifted. Pushing the front in also lets the whole
     * pad sink, which works against it, pushing the back in works with it.
     */
    private boolean push(double out, boolean along) {
        double sign = out > 0 ? 1 : -1;
        double sinking = along ? sign / (2 * cup.arm()) : 0;
        double askew = along ? front : side;
        double pushed = Math.abs(out) / (cup.radius() * (1 / across - sinking));
        if (film + sign * across / 2 * askew - pushed >= Hand.THINNEST_MM) {
            move(-pushed / 2, -sign * pushed / across, along);
            return true;
        }
        double lifted = Math.abs(out) / (cup.radius() * (1 / across + sinking));
        if (film - sign * across / 2 * askew + lifted <= Hand.THICKEST_MM) {
            move(lifted / 2, -sign * lifted / across, along);
            return true;
        }
        return false;
    }

    private void move(double film, double turn, boolean along) {
        this.film += film;
        if (along) {
            front += turn;
        } else {
            side += turn;
        }
    }

    /** Warm, let down on the rim. */
    boolean settle() {
        double share = Math.clamp(hand.settles() + draw.normal(hand.spread()), 0, 0.95);
        return take(share * frontLow() + draw.normal(hand.edge()), share * sideLow() + draw.normal(hand.edge()));
    }

    /** One heat correction by what the light shows. */
    boolean correct() {
        double share = hand.corrects() + draw.normal(hand.spread());
        return take(share * frontLow() + draw.normal(hand.edge()), share * sideLow() + draw.normal(hand.edge()));
    }

    /** Whether no feeler finds a gap at the lightest closing, wherever its play lets it land. */
    boolean seals() {
        double askew = cup.play() / Math.max(10, cup.key().tube().lengthMm()) / 2;
        return shut(askew) && shut(-askew);
    }

    private boolean shut(double askew) {
        Rim.Pad standing =
                new Rim.Pad(cup.radius(), cup.arm(), proud(), front, side + cup.sideTilt() + askew, cup.stiffness());
        return cup.rim().torqueToShut(standing, Hand.CLOSED_MM) <= cup.arm() * cup.closingN();
    }
}
