package hornwright.bench.feel;

import hornwright.bench.action.Action;
import hornwright.bench.horn.ById;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Spring;

/** One spring made stronger or weaker: by its set, its catch, or another wire. Torques at the hinge, key closed. */
public record SpringChange(String key, double fromNmm, double toNmm) {
    /** The share by which it changes: 0.1 is a tenth stronger. */
    public double share() {
        return toNmm / fromNmm - 1;
    }

    /** The same action with this spring changed; its rate changes in step, as with another wire of the same length. */
    public Action in(Action action) {
        Keywork k = action.keywork();
        ById<Key> keys = ById.of(k.keys().stream()
                .map(each -> each.id().equals(key) ? changed(each) : each)
                .toList());
        return new Action(k.withKeys(keys), action.thickness(), action.down(), action.away());
    }

    private Key changed(Key k) {
        Spring s = k.spring();
        Spring spring = new Spring(
                s.place(),
                s.material(),
                s.section(),
                s.lengthMm(),
                s.cradleArmMm(),
                s.modulusGPa(),
                toNmm,
                s.rateNmmPerRad() * toNmm / fromNmm,
                s.towards());
        return new Key(
                k.id(),
                k.name(),
                k.group(),
                k.rest(),
                k.rod(),
                k.axis(),
                k.stop(),
                k.closingStop(),
                k.touch(),
                spring,
                k.restRotationRad(),
                k.pressedRotationRad(),
                k.tube());
    }
}
