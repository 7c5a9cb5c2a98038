package hornwright.engines.leak;

/**
 * One question about a leak.
 *
 * @param opening where the air goes
 * @param pressure difference across it, Pa
 * @param loss entrance and exit loss of a slot in units of ρV²/2: about 1.5, or 0 for wall friction only
 * @param air the air
 */
public record LeakInput(Opening opening, double pressure, double loss, RoomAir air) {
    public LeakInput {
        if (!(pressure >= 0) || !(loss >= 0)) {
            throw new IllegalArgumentException("pressure and loss are not negative");
        }
    }
}
