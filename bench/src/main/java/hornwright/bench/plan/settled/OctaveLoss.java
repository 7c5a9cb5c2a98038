package hornwright.bench.plan.settled;

import hornwright.bench.action.Action;
import hornwright.bench.action.Thickness;
import hornwright.bench.horn.Coupling;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.LinkKind;
import hornwright.bench.horn.OctaveState;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.settled.SettledAnswer.VentLine;
import hornwright.engines.linkage.Balance;
import hornwright.engines.linkage.Mechanism;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** How far each octave vent opens in the state that opens it, before and after the contacts of the mechanism have packed. */
final class OctaveLoss {
    private static final double METRES = 1e-3;

    private final Keywork keywork;
    private final Reasons reasons;
    private final double times;
    private final Map<String, PlannedNumber> losses = new LinkedHashMap<>();
    private final Map<List<Object>, Double> runs = new HashMap<>();

    /** @param times how many times as hard as its touch was made for each key is pressed */
    OctaveLoss(Keywork keywork, LinkLoss loss, Reasons reasons, double times) {
        this.keywork = keywork;
        this.reasons = reasons;
        this.times = times;
        keywork.links()
                .where(link -> isOctave(link) && loss.hasFresh(link))
                .forEach(link -> losses.put(link.id(), loss.of(link)));
        losses.values().removeIf(number -> !(number.value() > 0));
    }

    /** What the contacts of the octave mechanism lose, by link. */
    Map<String, PlannedNumber> losses() {
        return losses;
    }

    List<VentLine> vents() {
        List<VentLine> lines = new ArrayList<>();
        for (OctaveState state : keywork.octaveStates()) {
            String vent = state.openVent();
            if (vent != null && !losses.isEmpty()) {
                keywork.cups().stream()
                        .filter(cup -> cup.key().equals(vent))
                        .findFirst()
                        .ifPresent(cup -> lines.add(line(state, cup)));
            }
        }
        return lines;
    }

    private VentLine line(OctaveState state, Cup cup) {
        List<String> links = List.copyOf(losses.keySet());
        double before = openMm(state, cup, Map.of());
        List<Because.Input> inputs = losses.entrySet().stream()
                .map(loss -> Because.Input.of(name(loss.getKey()) + " loses", loss.getValue()))
                .toList();
        String at = "%s %s".formatted(cup.id(), state.name());
        PlannedNumber then = reasons.derive(
                "packed/vent " + at,
                "the mechanism in balance in this state, every contact thinner by what it loses",
                "mm",
                in -> openMm(state, cup, thinner(links, in)),
                inputs);
        PlannedNumber less = reasons.derive(
                "packed/vent less " + at,
                "how far it opens before anything packed, less how far then: the mechanism in balance twice",
                "mm",
                in -> before - openMm(state, cup, thinner(links, in)),
                inputs);
        return new VentLine(state.name(), cup.id(), then, less);
    }

    private static Map<String, Double> thinner(List<String> links, double[] lost) {
        Map<String, Double> thinner = new LinkedHashMap<>();
        for (int i = 0; i < lost.length; i++) {
            thinner.put(links.get(i), lost[i]);
        }
        return thinner;
    }

    private double openMm(OctaveState state, Cup cup, Map<String, Double> lost) {
        return runs.computeIfAbsent(List.of(state, cup.id(), lost), none -> run(state, cup, lost));
    }

    private double run(OctaveState state, Cup cup, Map<String, Double> lost) {
        Thickness thickness = Thickness.asBuilt(keywork);
        for (Map.Entry<String, Double> one : lost.entrySet()) {
            thickness = thickness.with(one.getKey(), thickness.mm(one.getKey()) - one.getValue());
        }
        Set<String> down = new LinkedHashSet<>(state.pressed());
        Mechanism mechanism = new Action(keywork, thickness, down, Set.of()).mechanism();
        double[] gaps = Balance.of(mechanism)
                .under(state.pressed().stream()
                        .map(key -> Action.press(keywork.keys().get(key), times))
                        .toList())
                .cups()
                .gap();
        List<String> cups = mechanism.cups().stream().map(Mechanism.Cup::id).toList();
        return gaps[cups.indexOf(cup.id())] / METRES;
    }

    /** The thumb's links to the vents and the one by which G sets the switch. */
    private static boolean isOctave(Link link) {
        Coupling coupling = link.coupling();
        return coupling != null || link.kind() == LinkKind.SWITCHES;
    }

    private String name(String link) {
        Link one = keywork.links().get(link);
        return "%s to %s"
                .formatted(
                        keywork.keys().get(one.driver()).name().display(),
                        keywork.keys().get(one.follower()).name().display());
    }
}
