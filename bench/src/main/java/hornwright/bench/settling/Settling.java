package hornwright.bench.settling;

import hornwright.bench.material.Cell;
import hornwright.bench.material.Cushion;
import hornwright.bench.material.Materials;
import hornwright.bench.material.Property;
import hornwright.bench.material.Sheet;
import java.util.ArrayList;
import java.util.List;

/**
 * What a contact loses in its first weeks. Layers are springs in series: losses add, and a thinner layer also gives a
 * little less under the spring that rests on it.
 *
 * @param lossMm how much nearer the two sides come, mm
 * @param u one standard uncertainty, mm
 * @param parts what each layer loses of its own
 */
public record Settling(double lossMm, double u, List<Part> parts) {
    public Settling {
        parts = List.copyOf(parts);
    }

    /** One layer's loss and the figure it rests on. */
    public record Part(String place, double lossMm, double u, Cell share) {}

    /**
     * @param newtons that rest on the contact
     * @param areaMm2 they rest on
     */
    public static Settling of(List<Laid> layers, double newtons, double areaMm2, Materials materials) {
        List<Part> parts = new ArrayList<>();
        List<Sheet> before = new ArrayList<>();
        List<Sheet> after = new ArrayList<>();
        double square = 0;
        for (Laid layer : layers) {
            Cell share = materials.cell(layer.material(), Property.SETTLING);
            double loss = layer.fresh() ? share.value() * layer.thicknessMm() : 0;
            double u = layer.fresh() ? share.u() * layer.thicknessMm() : 0;
            parts.add(new Part(layer.place(), loss, u, share));
            before.add(new Sheet(layer.material(), layer.thicknessMm()));
            after.add(new Sheet(layer.material(), layer.thicknessMm() - loss));
            square += u * u;
        }
        double loss = height(before, newtons, areaMm2, materials) - height(after, newtons, areaMm2, materials);
        return new Settling(loss, Math.sqrt(square), parts);
    }

    private static double height(List<Sheet> sheets, double newtons, double areaMm2, Materials materials) {
        Cushion cushion = new Cushion(sheets, areaMm2);
        return cushion.thicknessMm() - cushion.compressionMm(newtons, materials);
    }
}
