package hornwright.bench.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Layer;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedNumber;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * How far a cup may move before the piece at its stop would be too thin to last or too thick to stay, mm at the front edge.
 *
 * @param downMm at most 0
 * @param upMm at least 0
 */
record FootRoom(double downMm, double upMm) {
    static final FootRoom ANY = new FootRoom(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** Of every cup whose stop the plan knows the thickness of, from the heights the plan wants. */
    static Map<String, FootRoom> of(SoundQuestion ask) {
        Map<String, FootRoom> rooms = new HashMap<>();
        for (Cup cup : ask.keywork().cups()) {
            for (Layer layer : ask.keywork().keyOf(cup).stop().layers()) {
                of(ask, layer).ifPresent(room -> rooms.put(cup.id(), room));
            }
        }
        return rooms;
    }

    private static Optional<FootRoom> of(SoundQuestion ask, Layer layer) {
        Optional<PlannedNumber> ratio = ask.plan().number(layer.place(), NumberName.RATIO);
        return ask.plan()
                .number(layer.place(), NumberName.THICKNESS)
                .flatMap(thickness -> ratio.map(rise -> {
                    double thinner = thickness.value() - ask.rules().value("foot.least_mm");
                    double thicker = ask.rules().value("foot.most_mm") - thickness.value();
                    return new FootRoom(-Math.max(0, thicker * rise.value()), Math.max(0, thinner * rise.value()));
                }));
    }
}
