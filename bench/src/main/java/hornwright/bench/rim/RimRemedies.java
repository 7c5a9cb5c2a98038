package hornwright.bench.rim;

import hornwright.bench.care.Hazard;
import hornwright.bench.horn.RimKind;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.sheet.Remedy;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Treatment.Reversible;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What can be done about a rim, least intrusive first. Ways are common practice, minutes bench judgement. */
final class RimRemedies {
    private final ShopRules rules;
    private final AgreedUse use;

    RimRemedies(ShopRules rules, AgreedUse use) {
        this.rules = rules;
        this.use = use;
    }

    List<Remedy> of(RimKind rim, double gapMm, double clock, boolean ringTight) {
        List<Remedy> ways = new ArrayList<>();
        ways.add(floating(clock));
        if (rim == RimKind.SOLDERED && !ringTight) {
            ways.add(Remedy.of(
                    "Leak-test the ring; one that leaks is soldered before anything else",
                    "soapy water round its foot, that part alone under 1 to 3 kPa",
                    5,
                    10,
                    Reversible.YES,
                    Hazard.SOLDERING));
        }
        if (gapMm > rules.value("rim.accept_mm") && rim != RimKind.PIP) {
            ways.add(lift(rim, clock));
        }
        boolean mayFile = rim == RimKind.DRAWN || (rim == RimKind.SOLDERED && ringTight);
        if (mayFile && use != AgreedUse.DISPLAY && gapMm >= rules.value("rim.act_mm")) {
            ways.add(file());
        }
        return ways;
    }

    private Remedy floating(double clock) {
        return Remedy.of(
                String.format(
                        Locale.ROOT, "Leave the rim and float the pad: more adhesive towards %s o'clock", plain(clock)),
                "a softer pad over a warped hole is a compromise with a price",
                2,
                10,
                Reversible.YES);
    }

    private Remedy lift(RimKind rim, double clock) {
        boolean rolled = rim == RimKind.ROLLED;
        String stop = rolled
                ? String.format(Locale.ROOT, "%.2f mm, then float; never file it", rules.value("rim.accept_mm"))
                : String.format(
                        Locale.ROOT, "%.2f mm; %.2f may stay", rules.value("rim.aim_mm"), rules.value("rim.accept_mm"));
        return Remedy.of(
                String.format(
                        Locale.ROOT,
                        rolled
                                ? "Lift the low side at %s o'clock from inside, in small steps, no press"
                                : "Lift the low side at %s o'clock from inside; no metal is lost",
                        plain(clock)),
                stop,
                10,
                30,
                Reversible.PARTLY,
                rolled ? Hazard.ROLLED_RIM : Hazard.LEVELLING);
    }

    private Remedy file() {
        return Remedy.of(
                "Only then a flat file across the top, a few strokes, and the disc again",
                String.format(
                        Locale.ROOT,
                        "%.2f mm off in all; the owner's yes first, every stroke logged",
                        rules.value("rim.file-most_mm")),
                10,
                30,
                Reversible.NO,
                Hazard.LEVELLING,
                Hazard.DUST);
    }

    private static String plain(double clock) {
        return clock == Math.rint(clock)
                ? String.format(Locale.ROOT, "%.0f", clock)
                : String.format(Locale.ROOT, "%.1f", clock);
    }
}
