package hornwright.bench.bounce;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Stop;
import hornwright.bench.horn.Touch;
import hornwright.bench.material.Cushion;
import hornwright.bench.material.Materials;
import hornwright.bench.material.Sheet;
import hornwright.bench.settling.KeySettling;
import hornwright.engines.action.ActionInput;
import hornwright.engines.action.Bumper;
import hornwright.engines.action.KeyPart;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A key that its spring opens, with all the action engine needs to know of it.
 *
 * @param parts cup, pad, centre and arm
 * @param cushion what it lands on
 */
public record OpeningKey(Key key, Cup cup, List<KeyPart> parts, Cushion cushion, double frictionShare, double speed) {
    private static final double METRES = 1e-3;
    private static final double KILOGRAMS = 1e-3;
    private static final double NEWTON_METRES = 1e-3;

    /** A restitution outside makes no bumper. */
    private static final double DEADEST = 0.02;

    private static final double LIVELIEST = 0.98;

    /** A force to start from, N, and how often it is made better. */
    private static final double FIRST_GUESS = 10;

    private static final int ROUNDS = 6;

    /** The key as the pattern has it; empty for one that its spring shuts or that carries no cup. */
    public static Optional<OpeningKey> of(Keywork keywork, Key key, Materials materials) {
        return keywork.cupOf(key)
                .filter(cup -> key.restRotationRad() > 0)
                .map(cup -> of(key, cup, key.stop(), materials));
    }

    private static OpeningKey of(Key key, Cup cup, Stop stop, Materials materials) {
        List<Sheet> sheets = stop.layers().stream()
                .map(layer -> new Sheet(layer.material(), layer.thicknessMm()))
                .toList();
        return new OpeningKey(
                key,
                cup,
                parts(cup, materials.rules().value("bounce.arm-share")),
                new Cushion(sheets, KeySettling.area(stop, materials.rules()).value()),
                materials.rules().value("bounce.friction-share"),
                materials.rules().value("bounce.speed_m_per_s"));
    }

    private static List<KeyPart> parts(Cup cup, double armShare) {
        double arm = METRES * cup.armMm();
        double cupMass = KILOGRAMS * cup.massG();
        return List.of(
                new KeyPart.Disc(cupMass, METRES * cup.insideDiameterMm() / 2, METRES * cup.depthMm(), arm),
                disc(cup.pad().massG(), cup.pad().diameterMm(), cup.pad().thicknessMm(), arm),
                disc(
                        cup.centre().massG(),
                        cup.centre().diameterMm(),
                        cup.centre().thicknessMm(),
                        arm),
                new KeyPart.Bar(armShare * cupMass, arm, arm / 2));
    }

    private static KeyPart disc(double massG, double diameterMm, double thicknessMm, double arm) {
        return new KeyPart.Disc(KILOGRAMS * massG, METRES * diameterMm / 2, METRES * thicknessMm, arm);
    }

    /** The same with something else in the middle of the pad. */
    public OpeningKey withCentre(double massG, double diameterMm, double thicknessMm) {
        KeyPart centre = disc(massG, diameterMm, thicknessMm, METRES * cup.armMm());
        List<KeyPart> changed = List.of(parts.get(0), parts.get(1), centre, parts.get(3));
        return new OpeningKey(key, cup, changed, cushion, frictionShare, speed);
    }

    /** The same on another cushion of the same area. */
    public OpeningKey on(List<Sheet> sheets) {
        Cushion other = new Cushion(sheets, cushion.areaMm2());
        return new OpeningKey(key, cup, parts, other, frictionShare, speed);
    }

    OpeningKey with(double area, double armShare, double friction) {
        List<KeyPart> heavier = parts(cup, armShare);
        List<KeyPart> changed = List.of(parts.get(0), parts.get(1), parts.get(2), heavier.get(3));
        return new OpeningKey(key, cup, changed, new Cushion(cushion.sheets(), area), friction, speed);
    }

    /** The question as the action engine wants it. */
    public ActionInput asEngineWantsIt(Materials materials) {
        return input(materials, null);
    }

    /** As the engine wants it; the restitution is that of the cushion unless one is given. */
    ActionInput input(Materials materials, @Nullable Double restitution) {
        Cushion.Law law = landing(materials);
        double back = Math.clamp(restitution == null ? law.restitution() : restitution, DEADEST, LIVELIEST);
        Touch touch = key.touch();
        return new ActionInput(
                KeyPart.inertia(parts),
                torque(),
                NEWTON_METRES * key.spring().rateNmmPerRad(),
                METRES * cup.armMm() * key.restRotationRad(),
                METRES * cup.armMm(),
                METRES * key.stop().armMm(),
                touch == null ? null : Double.valueOf(METRES * touch.armMm()),
                Bumper.givingBack(inSi(law), law.exponent(), back, speed),
                frictionShare * torque());
    }

    private double torque() {
        return NEWTON_METRES * key.spring().torqueNmm();
    }

    /** The cushion's law at the force of its own landing, which is found by taking it again and again. */
    private Cushion.Law landing(Materials materials) {
        double arm = METRES * key.stop().armMm();
        double turn = key.restRotationRad();
        double work = torque() * turn - NEWTON_METRES * key.spring().rateNmmPerRad() * turn * turn / 2;
        double mass = KeyPart.inertia(parts) / (arm * arm);
        double landing = Math.sqrt(2 * Math.max(work, 1e-9) / mass);
        double newtons = FIRST_GUESS;
        for (int round = 0; round < ROUNDS; round++) {
            Cushion.Law law = cushion.law(newtons, materials);
            double deep = new Bumper(inSi(law), law.exponent(), 0).deepest(mass, landing);
            newtons = inSi(law) * Math.pow(deep, law.exponent());
        }
        return cushion.law(newtons, materials);
    }

    private static double inSi(Cushion.Law law) {
        return law.stiffness() * Math.pow(1e3, law.exponent());
    }
}
