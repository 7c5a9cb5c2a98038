package hornwright.desk.reckon;

/** The units fields are written in; engines know only SI. */
enum Unit {
    MM(1e3),
    UM(1e6),
    ML(1e6),
    MM2(1e6),
    MM3(1e9),
    UM3(1e18),
    G(1e3),
    G_MM2(1e9),
    N_PER_MM(1e-3),
    NMM(1e3),
    KPA(1e-3),
    MPA(1e-6),
    GPA(1e-9),
    MRAD(1e3),
    DEG(180 / Math.PI),
    MS(1e3);

    private final double perSi;

    Unit(double perSi) {
        this.perSi = perSi;
    }

    /** A value in this unit as SI. */
    double si(double value) {
        return value / perSi;
    }

    /** An SI value in this unit. */
    double of(double si) {
        return si * perSi;
    }
}
