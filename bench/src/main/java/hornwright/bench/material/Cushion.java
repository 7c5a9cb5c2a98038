package hornwright.bench.material;

import java.util.List;

/**
 * Sheets on top of each other under one foot: springs in series, each with the whole force on it. A sheet of thickness t
 * and area A gives by t (F / (A × modulus))^(1/exponent).
 */
public record Cushion(List<Sheet> sheets, double areaMm2) {

    /** Force (N) = stiffness (N/mm^exponent) × compression^exponent: the power law that touches this cushion at one force. */
    public record Law(double stiffness, double exponent, double restitution) {}

    public Cushion {
        sheets = sheets.stream().filter(sheet -> sheet.thicknessMm() > 0).toList();
        if (!(areaMm2 > 0)) {
            throw new IllegalArgumentException("a foot has an area");
        }
    }

    public boolean isEmpty() {
        return sheets.isEmpty();
    }

    public double thicknessMm() {
        return sheets.stream().mapToDouble(Sheet::thicknessMm).sum();
    }

    /** How far it gives under a force, mm. */
    public double compressionMm(double newtons, Materials materials) {
        return sheets.stream()
                .mapToDouble(sheet -> compressionMm(sheet, newtons, materials))
                .sum();
    }

    /** Share of its thickness one sheet of it gives. */
    double strain(String material, double newtons, Materials materials) {
        double modulus = materials.value(material, Property.MODULUS);
        return Math.pow(newtons / (areaMm2 * modulus), 1 / materials.value(material, Property.EXPONENT));
    }

    private double compressionMm(Sheet sheet, double newtons, Materials materials) {
        return sheet.thicknessMm() * strain(sheet.material(), newtons, materials);
    }

    /** How it gives about a force; what each sheet gives back counts by the energy it takes up. */
    public Law law(double newtons, Materials materials) {
        double compression = 0;
        double slope = 0;
        double energy = 0;
        double back = 0;
        for (Sheet sheet : sheets) {
            double exponent = materials.value(sheet.material(), Property.EXPONENT);
            double restitution = materials.value(sheet.material(), Property.RESTITUTION);
            double given = compressionMm(sheet, newtons, materials);
            compression += given;
            slope += given / (exponent * newtons);
            energy += given / (exponent + 1);
            back += given / (exponent + 1) * restitution * restitution;
        }
        double exponent = compression / (slope * newtons);
        return new Law(newtons / Math.pow(compression, exponent), exponent, Math.sqrt(back / energy));
    }
}
