package hornwright.bench.body;

import hornwright.bench.care.Hazard;
import hornwright.bench.sheet.Remedy;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PinAccess;
import hornwright.bench.survey.PinSort;
import hornwright.bench.survey.Treatment.Reversible;
import java.util.ArrayList;
import java.util.List;

/** What can be done about a pin, least intrusive first. Ways are common practice, minutes bench judgement. */
final class PinRemedies {
    private final AgreedUse use;

    PinRemedies(AgreedUse use) {
        this.use = use;
    }

    List<Remedy> of(Observed.Pin pin) {
        List<Remedy> ways = new ArrayList<>();
        ways.add(leave(pin.sort()));
        if (pin.access() == PinAccess.NONE) {
            return ways;
        }
        if (pin.access() == PinAccess.UNSOLDER) {
            ways.add(Remedy.of(
                    "A part has to be unsoldered first: brace, guard foot or bell",
                    "only with the owner's yes; what lies near lets go as well",
                    20,
                    60,
                    Reversible.PARTLY,
                    Hazard.SOLDERING,
                    Hazard.HEAT));
        }
        ways.add(mend(pin));
        return ways;
    }

    private static Remedy leave(PinSort sort) {
        return Remedy.of(
                sort == PinSort.CRACK
                        ? "Leave it, mark both ends where nobody sees it, measure again at every visit"
                        : "Leave it, with its size in the report",
                "",
                1,
                3,
                Reversible.YES);
    }

    private Remedy mend(Observed.Pin pin) {
        return switch (pin.sort()) {
            case DENT ->
                Remedy.of(
                        "Raise it with a ball or rod that fits the bore, burnished from its edge to its middle",
                        use == AgreedUse.DISPLAY
                                ? "when the wall follows; a trace may stay rather than a stretched wall"
                                : "when light runs over it in one line; try the nearest rims with the disc afterwards",
                        10,
                        60,
                        Reversible.PARTLY,
                        Hazard.CLAMPING);
            case CRACK ->
                Remedy.of(
                        "Bring its edges level, then soft solder with a thin patch inside",
                        "no filing of the outside",
                        20,
                        60,
                        Reversible.PARTLY,
                        Hazard.SOLDERING,
                        Hazard.HEAT);
            case CORROSION ->
                Remedy.of(
                        "Brush it dry, wash, dry warm, wax; red spots in the metal itself stay",
                        "stop at sound metal; no acid, no ammonia",
                        10,
                        30,
                        Reversible.PARTLY,
                        Hazard.DUST,
                        Hazard.SOLVENT);
            case OLD_SOLDER ->
                Remedy.of(
                        "Lift what stands proud with wood and a warm iron, wipe the rest; never scrape into the brass",
                        "a grey trace may stay: it is part of the story",
                        10,
                        40,
                        Reversible.NO,
                        Hazard.SOLDERING,
                        Hazard.HEAT);
            case LIFTED_RING ->
                Remedy.of(
                        "Leak-test it, then flow new solder in from the open side, weights instead of clamps",
                        "when a drop of soapy water stays still all round",
                        15,
                        45,
                        Reversible.PARTLY,
                        Hazard.SOLDERING,
                        Hazard.CLAMPING);
            case MISSING_STONE ->
                Remedy.of(
                        "Set one of the same stuff and thickness, warmed no more than the glue needs",
                        "the old seat is cleaned, not enlarged",
                        10,
                        30,
                        Reversible.YES,
                        Hazard.HEAT);
        };
    }
}
