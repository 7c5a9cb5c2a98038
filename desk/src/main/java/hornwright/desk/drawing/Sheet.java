package hornwright.desk.drawing;

import hornwright.bench.horn.HornPart;
import hornwright.bench.horn.Position;
import hornwright.bench.horn.Tube;
import hornwright.bench.horn.TubePart;
import java.util.ArrayList;
import java.util.List;

/**
 * The tube cut along the back and laid flat: the neck at the left, the bell at the right, the front line across the
 * middle, the player's left above it. Each piece has its own width so that keys have room; round the tube every angle
 * keeps its share of that width. A ring on an opened cone is an arc, so everything stands on arcs that bow to the bell.
 */
public final class Sheet {
    public static final double WIDTH = 1400;
    public static final double HEIGHT = 560;
    static final double FRONT = 280;
    private static final double LEFT = 36;
    private static final double RIGHT = 1352;
    private static final double SOCKET = 14;
    /** How far an arc bows, as a share of half its width. */
    private static final double BOW = 0.085;
    /** Radius of a cup in units for each millimetre along the body; half would be true to the length. */
    private static final double CUP = 0.45;

    /** One piece of the tube on the sheet; halves are half its width at its ends. */
    record Piece(
            HornPart part,
            double fromMm,
            double toMm,
            double left,
            double right,
            double halfLeft,
            double halfRight,
            double flare) {
        double half(double x) {
            double share = Math.max(0, (x - left) / (right - left));
            return halfLeft + (halfRight - halfLeft) * Math.pow(share, flare);
        }

        double x(double atMm) {
            return left + (atMm - fromMm) / (toMm - fromMm) * (right - left);
        }
    }

    private final List<Piece> pieces;
    private final double unitsPerMm;

    private Sheet(List<Piece> pieces, double unitsPerMm) {
        this.pieces = List.copyOf(pieces);
        this.unitsPerMm = unitsPerMm;
    }

    public static Sheet of(Tube tube) {
        double share = tube.parts().stream().mapToDouble(Sheet::weight).sum();
        boolean neck =
                tube.parts().getFirst().part() == HornPart.NECK && tube.parts().size() > 1;
        double unit = (RIGHT - LEFT - (neck ? SOCKET : 0)) / share;
        List<Piece> pieces = new ArrayList<>();
        double x = LEFT;
        double half = 112;
        for (TubePart part : tube.parts()) {
            double to = x + weight(part) * unit;
            double start = part.part() == HornPart.NECK ? 26 : half;
            double end = halfAtEnd(part.part());
            double flare = part.part() == HornPart.BELL ? 2.1 : 1;
            pieces.add(new Piece(part.part(), part.fromMm(), part.toMm(), x, to, start, end, flare));
            x = to + (part.part() == HornPart.NECK ? SOCKET : 0);
            half = part.part() == HornPart.NECK ? 112 : end;
        }
        return new Sheet(pieces, unit * stretch(HornPart.BODY));
    }

    /** How long a piece is drawn: its length, more where many keys stand. */
    private static double weight(TubePart part) {
        return (part.toMm() - part.fromMm()) * stretch(part.part());
    }

    private static double stretch(HornPart part) {
        return switch (part) {
            case NECK -> 0.6;
            case BODY -> 1.57;
            case BOW -> 1.33;
            case BELL -> 1.4;
        };
    }

    private static double halfAtEnd(HornPart part) {
        return switch (part) {
            case NECK -> 45;
            case BODY -> 172;
            case BOW -> 186;
            case BELL -> 250;
        };
    }

    List<Piece> pieces() {
        return pieces;
    }

    /** Units along the body for one millimetre. */
    public double unitsPerMm() {
        return unitsPerMm;
    }

    /** Radius in units at which a disc of that diameter in millimetres is drawn, anywhere on the sheet. */
    public double radius(double diameterMm) {
        return diameterMm * CUP * unitsPerMm;
    }

    Piece pieceAt(double atMm) {
        return pieces.stream().filter(p -> atMm <= p.toMm()).findFirst().orElse(pieces.getLast());
    }

    /** Where a spot of the tube lies; an angle beyond 180 hangs over the cut. */
    public Spot spot(double atMm, double angleDeg) {
        Piece piece = pieceAt(atMm);
        double x = piece.x(atMm);
        double half = piece.half(x);
        double round = angleDeg / 180;
        return new Spot(x + BOW * half * (1 - round * round), FRONT + round * half);
    }

    /** The spot of the tube that is drawn there, the other way about. */
    public Position position(Spot spot) {
        Position best = new Position(0, 0);
        double least = Double.MAX_VALUE;
        for (Piece piece : pieces) {
            double x = spot.x();
            for (int i = 0; i < 60; i++) {
                double half = piece.half(x);
                double round = (spot.y() - FRONT) / half;
                x = spot.x() - BOW * half * (1 - round * round);
            }
            double outside = Math.max(0, Math.max(piece.left() - x, x - piece.right()));
            if (outside < least) {
                least = outside;
                double at = piece.fromMm()
                        + (x - piece.left()) / (piece.right() - piece.left()) * (piece.toMm() - piece.fromMm());
                best = new Position(at, (spot.y() - FRONT) / piece.half(x) * 180);
            }
        }
        return best;
    }

    /** The straight or bent line along the tube at one angle. */
    List<Spot> line(double fromMm, double toMm, double angleDeg) {
        List<Spot> spots = new ArrayList<>();
        spots.add(spot(fromMm, angleDeg));
        for (Piece piece : pieces) {
            if (piece.fromMm() > fromMm && piece.fromMm() < toMm) {
                spots.add(spot(piece.fromMm(), angleDeg));
            }
        }
        spots.add(spot(toMm, angleDeg));
        return spots;
    }

    /** Half the width of the sheet at a distance from its left edge, along the cut. */
    double halfAt(double x) {
        return pieces.stream()
                .filter(piece -> x <= piece.right())
                .findFirst()
                .orElse(pieces.getLast())
                .half(x);
    }
}
