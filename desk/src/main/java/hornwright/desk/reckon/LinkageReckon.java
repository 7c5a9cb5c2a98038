package hornwright.desk.reckon;

import hornwright.desk.json.BadInput;
import hornwright.desk.json.Fault;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;
import hornwright.engines.linkage.Conflict;
import hornwright.engines.linkage.Linkage;
import hornwright.engines.linkage.LinkageInput;
import hornwright.engines.linkage.LinkageResult;
import hornwright.engines.linkage.Mechanism;
import hornwright.engines.linkage.SetThickness;
import hornwright.engines.linkage.UnbalancedLoad;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** {@code reckon linkage}: coupled keys at rest and under a finger, thicknesses that close them together, yield. */
final class LinkageReckon implements Engine {
    @Override
    public String name() {
        return "linkage";
    }

    @Override
    public String question() {
        return "where coupled keys come to rest, thicknesses that close all pads together";
    }

    @Override
    public Reckoning read(Fields in) {
        LinkageFields read = LinkageFields.read(in);
        return () -> compute(read.input());
    }

    private static Answer compute(LinkageInput input) {
        LinkageResult result;
        try {
            result = Linkage.reckon(input);
        } catch (UnbalancedLoad load) {
            throw new BadInput(unbalanced(input.mechanism(), load));
        }
        Out out = new LinkageOut(input.mechanism(), result).write();
        String shortfall = shortfall(result);
        return shortfall == null ? Answer.of(out) : Answer.falling(out, shortfall);
    }

    private static List<Fault> unbalanced(Mechanism mechanism, UnbalancedLoad load) {
        return IntStream.range(0, mechanism.keys().size())
                .filter(i -> load.keys().contains(mechanism.keys().get(i).id()))
                .mapToObj(i -> new Fault(
                        "/keys/" + i,
                        "nothing balances the load on \""
                                + mechanism.keys().get(i).id() + "\"",
                        "a stop, a cup, or a spring with a rate on this key"))
                .toList();
    }

    private static @Nullable String shortfall(LinkageResult result) {
        List<Conflict> conflicts = result.thicknesses().conflicts();
        if (!conflicts.isEmpty()) {
            return "sets ask different thicknesses of "
                    + conflicts.stream().map(Conflict::link).collect(Collectors.joining(", "));
        }
        List<String> below = result.thicknesses().set().stream()
                .filter(set -> set.thickness() < 0)
                .map(SetThickness::link)
                .toList();
        return below.isEmpty()
                ? null
                : "no material is thin enough at " + String.join(", ", below) + ": its space would have to grow";
    }
}
