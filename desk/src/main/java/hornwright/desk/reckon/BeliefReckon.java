package hornwright.desk.reckon;

import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;
import hornwright.engines.belief.Belief;
import hornwright.engines.belief.BeliefAnswer;
import hornwright.engines.belief.BeliefQuestion;
import hornwright.engines.belief.Sighting;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** {@code reckon belief}. */
final class BeliefReckon implements Engine {
    /** Above this a serial would not survive the way through a JSON number. */
    private static final double LARGEST = 1L << 53;

    @Override
    public String name() {
        return "belief";
    }

    @Override
    public String question() {
        return "where along the serial numbers a material changed";
    }

    @Override
    public Reckoning read(Fields in) {
        List<String> materials = materials(in);
        if (!in.has("observations")) {
            in.fault("observations", "missing", "\"observations\": [ {\"serial\": 41200, \"material\": \"felt\"} ]");
        }
        List<Sighting> seen = in.list("observations", one -> sighting(one, materials));
        double prior = in.number("prior", Bound.POSITIVE, "0.5");
        double change = in.number("change", Bound.SHARE, "0.02");
        List<Long> at = in.numbers("at", Bound.WHOLE, "41207").stream()
                .map(serial -> whole(in, "at", serial))
                .toList();
        return () -> Answer.of(out(Belief.of(new BeliefQuestion(seen, materials, prior, change, at))));
    }

    private static List<String> materials(Fields in) {
        List<String> materials = in.texts("materials");
        if (materials.isEmpty()) {
            in.fault("materials", "at least one material must be listed", "\"materials\": [\"felt\", \"cork\"]");
        }
        Set<String> met = new HashSet<>();
        for (int i = 0; i < materials.size(); i++) {
            if (!met.add(materials.get(i))) {
                in.faultIn("materials", i, "\"" + materials.get(i) + "\" is listed twice", "each material once");
            }
        }
        return materials;
    }

    private static Sighting sighting(Fields in, List<String> materials) {
        long serial = whole(in, "serial", in.number("serial", Bound.WHOLE, "41200"));
        String material = in.text("material", "felt");
        if (in.has("material") && !materials.contains(material)) {
            in.fault("material", "\"" + material + "\" is not among the materials", "one of " + materials);
        }
        return new Sighting(serial, material, in.numberOr("weight", 1, Bound.SHARE, "1.0"));
    }

    private static long whole(Fields in, String name, double serial) {
        if (Math.abs(serial) > LARGEST) {
            in.fault(name, serial + " is longer than a serial can be", "41200");
        }
        return (long) serial;
    }

    private static Out out(BeliefAnswer answer) {
        double[] changes =
                answer.changes().stream().mapToDouble(Double::doubleValue).toArray();
        return Out.object()
                .put("log_evidence", answer.logEvidence())
                .put("changes", changes)
                .put(
                        "change_after",
                        answer.changeAfter().stream()
                                .map(one ->
                                        Out.object().put("serial", one.serial()).put("probability", one.probability()))
                                .toList())
                .put(
                        "best",
                        answer.best().stream()
                                .map(one -> Out.object()
                                        .put("from", one.from())
                                        .put("to", one.to())
                                        .put("counts", named(one.counts())))
                                .toList())
                .put("at", answer.at().stream().map(BeliefReckon::at).toList())
                .put(
                        "change_over",
                        answer.changeOver().stream()
                                .map(one -> Out.object()
                                        .put("from", one.from())
                                        .put("to", one.to())
                                        .put("probability", one.probability()))
                                .toList());
    }

    private static Out at(BeliefAnswer.At at) {
        return Out.object()
                .put("serial", at.serial())
                .put("probabilities", named(at.probabilities()))
                .put("standing", at.standing().name().toLowerCase(Locale.ROOT));
    }

    private static Out named(Map<String, Double> numbers) {
        Out out = Out.object();
        numbers.forEach((name, number) -> out.put(name, number.doubleValue()));
        return out;
    }
}
