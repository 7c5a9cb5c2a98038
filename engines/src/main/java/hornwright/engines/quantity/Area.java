package hornwright.engines.quantity;

/** An area. SI unit: m². */
public record Area(double squareMetres) implements Quantity<Area> {
    /** SquareMillimetres (mm²). */
    public static Area ofSquareMillimetres(double squareMillimetres) {
        return new Area(squareMillimetres * (1e-6));
    }

    /** The same in mm². */
    public double inSquareMillimetres() {
        return squareMetres / (1e-6);
    }

    @Override
    public double si() {
        return squareMetres;
    }

    @Override
    public Area withSi(double value) {
        return new Area(value);
    }
}
