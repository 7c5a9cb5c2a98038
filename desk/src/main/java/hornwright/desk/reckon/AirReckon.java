package hornwright.desk.reckon;

import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;
import hornwright.desk.reckon.AirFields.NamedHole;
import hornwright.engines.air.AirColumn;
import hornwright.engines.air.AirInput;
import hornwright.engines.air.AirInput.BorePoint;
import hornwright.engines.air.AirInput.Fingering;
import hornwright.engines.air.AirInput.Hole;
import hornwright.engines.air.AirInput.Leak;
import hornwright.engines.air.AirResult;
import hornwright.engines.air.AirResult.ImpedanceCurve;
import hornwright.engines.air.AirResult.Voicing;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** {@code reckon air}. */
final class AirReckon implements Engine {
    private static final List<String> WISHES = List.of("peaks", "sensitivity", "curve");

    private record NamedFingering(String id, Fingering fingering) {}

    @Override
    public String name() {
        return "air";
    }

    @Override
    public String question() {
        return "resonances of every fingering, what each pad height does to them";
    }

    @Override
    public Reckoning read(Fields in) {
        List<BorePoint> bore = AirPlaces.bore(in, in.someOf("bore", AirFields::borePoint));
        List<NamedHole> named = in.list("holes", AirFields::hole);
        in.uniqueIds("holes", named.stream().map(NamedHole::id).toList());
        List<Hole> holes = named.stream().map(NamedHole::hole).toList();
        List<NamedFingering> fingerings = fingerings(in, named);
        List<Leak> leaks = in.list("leaks", AirFields::leak);
        boolean interaction = in.flagOr("interaction", false);
        AirPlaces.check(in, bore, holes, leaks, interaction);
        List<String> want = want(in);
        AirInput input = new AirInput(
                AirFields.air(in),
                bore,
                AirFields.mouthpiece(in),
                AirFields.bell(in),
                holes,
                fingerings.stream().map(NamedFingering::fingering).toList(),
                leaks,
                in.flagOr("losses", true),
                interaction,
                in.wholeOr("modes", 3, Bound.COUNT, "3"),
                want.contains("sensitivity"),
                AirFields.curve(in, want.contains("curve")));
        return () -> answer(input, named, fingerings, AirColumn.reckon(input));
    }

    private static List<String> want(Fields in) {
        List<String> want = in.texts("want");
        for (int i = 0; i < want.size(); i++) {
            if (!want.get(i).isEmpty() && !WISHES.contains(want.get(i))) {
                in.faultIn("want", i, "\"" + want.get(i) + "\" is nothing that can be wanted", "one of " + WISHES);
            }
        }
        return want;
    }

    private static List<NamedFingering> fingerings(Fields in, List<NamedHole> holes) {
        List<NamedFingering> all = in.someOf("fingerings", one -> fingering(one, holes));
        in.uniqueIds("fingerings", all.stream().map(NamedFingering::id).toList());
        return all;
    }

    private static NamedFingering fingering(Fields in, List<NamedHole> holes) {
        String id = in.text("id", "low");
        List<String> ids = holes.stream().map(NamedHole::id).toList();
        List<String> names = in.texts("open");
        List<Integer> open = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            int hole = ids.indexOf(names.get(i));
            if (hole < 0) {
                String known = ids.isEmpty() ? "an id from holes" : "\"" + ids.getFirst() + "\"";
                in.faultIn("open", i, "there is no hole \"" + names.get(i) + "\"", known);
            } else if (open.contains(hole)) {
                in.faultIn("open", i, "the hole \"" + names.get(i) + "\" stands twice in this list", "once");
            } else if (standsShut(holes.get(hole).hole())) {
                in.faultIn("open", i, "this pad has a height_mm of 0: it cannot stand open", "a height above 0");
            } else {
                open.add(hole);
            }
        }
        return new NamedFingering(id, new Fingering(open, in.wholeOr("peak", 1, Bound.COUNT, "1")));
    }

    private static boolean standsShut(Hole hole) {
        return hole.pad() != null && !(hole.pad().height() > 0);
    }

    private static Answer answer(
            AirInput input, List<NamedHole> holes, List<NamedFingering> fingerings, AirResult result) {
        List<Out> all = new ArrayList<>();
        List<String> silent = new ArrayList<>();
        for (int i = 0; i < fingerings.size(); i++) {
            Voicing voicing = result.fingerings().get(i);
            int peak = fingerings.get(i).fingering().peak();
            all.add(voicing(input, holes, fingerings.get(i), voicing));
            if (!voicing.sounds()) {
                silent.add("fingering \"" + fingerings.get(i).id() + "\" has no resonance number " + peak);
            }
        }
        Out out = Out.object().put("fingerings", all);
        return silent.isEmpty() ? Answer.of(out) : Answer.falling(out, String.join("; ", silent));
    }

    private static Out voicing(AirInput input, List<NamedHole> holes, NamedFingering fingering, Voicing voicing) {
        Out out = Out.object()
                .put("id", fingering.id())
                .put(
                        "peaks",
                        voicing.peaks().stream()
                                .map(peak -> Out.object()
                                        .put("frequency_Hz", peak.frequency())
                                        .put("magnitude_Pa_s_per_m3", peak.magnitude())
                                        .put("quality", peak.quality()))
                                .toList())
                .put("soft_Hz", voicing.soft())
                .put("loud_Hz", voicing.loud());
        if (input.sensitivity()) {
            out.put(
                    "sensitivity",
                    voicing.sensitivities().stream()
                            .map(s -> Out.object()
                                    .put("hole", holes.get(s.hole()).id())
                                    .put("cents_per_mm", s.centsPerMetre() / 1e3)
                                    .put("peak", fingering.fingering().peak()))
                            .toList());
        } else {
            out.putNull("sensitivity");
        }
        return out.put("curve", curve(voicing.curve()));
    }

    private static @Nullable Out curve(@Nullable ImpedanceCurve curve) {
        return curve == null
                ? null
                : Out.object()
                        .put("frequency_Hz", curve.frequency())
                        .put("re", curve.re())
                        .put("im", curve.im());
    }
}
