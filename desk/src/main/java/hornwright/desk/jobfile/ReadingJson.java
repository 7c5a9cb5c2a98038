package hornwright.desk.jobfile;

import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PinAccess;
import hornwright.bench.survey.PinChoice;
import hornwright.bench.survey.PinSort;
import hornwright.bench.survey.PlayGrade;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.TrialVerdict;
import hornwright.bench.survey.Unit;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import org.jspecify.annotations.Nullable;

/** One reading; which fields it has follows from its kind. */
final class ReadingJson {
    private ReadingJson() {}

    static Reading read(Fields f, Known known) {
        String id = f.text("id", "r.010");
        ReadingKind kind = f.choice("kind", Spoken.of(ReadingKind.values(), ReadingKind::word));
        String of = f.text("of", "cup.d");
        known.check(f, "of", of, kind.subject());
        return new Reading(
                id,
                kind,
                of,
                f.textOr("point", "", "along the hinge"),
                f.has("kind") ? observed(f, kind) : new Observed.Says(""),
                f.textOr("with", kind.usualInstrument(), "caliper"),
                f.textOr("raw", "", "48.75"),
                f.textOr("who", "", "tl"),
                instant(f),
                f.choiceOr("stage", Spoken.of(Stage.values(), Stage::word), Stage.ARRIVAL),
                f.textIfAny("series", "s.1"));
    }

    private static Observed observed(Fields f, ReadingKind kind) {
        return switch (kind) {
            case RIM_GAP -> rimGap(f);
            case PLAY ->
                new Observed.Play(
                        f.choice("radial", Spoken.of(PlayGrade.values(), PlayGrade::word)),
                        f.choice("end", Spoken.of(PlayGrade.values(), PlayGrade::word)));
            case TRIAL_PAD -> trialPad(f);
            case TRIAL_SHIM -> trialShim(f);
            case PIN -> pin(f);
            case STAMP, SERIAL, SWITCH, RIM_CHECK, NECK_CHECK, LEAK_SITE, ADHESIVE_FOUND, FINISH_SIGN, CLOCK_STARTED ->
                new Observed.Says(f.text("says", "207"));
            default -> amount(f, kind);
        };
    }

    private static Observed amount(Fields f, ReadingKind kind) {
        Unit unit = kind.unit() == null ? Unit.MILLIMETRE : kind.unit();
        String suffix = suffix(unit);
        Bound bound = unit == Unit.CENTS || unit == Unit.DEGREES_CELSIUS ? Bound.ANY : bound(kind);
        return new Observed.Amount(
                f.number("value" + suffix, bound, "4.3"),
                unit,
                f.numberIfAny("u" + suffix, Bound.NOT_NEGATIVE, "0.05"));
    }

    /** Diameters and arms are more than nothing; a thickness or a height may be nothing. */
    private static Bound bound(ReadingKind kind) {
        return switch (kind) {
            case CUP_INSIDE, HOLE, AXIS_TO_CENTRE, AXIS_TO_FOOT -> Bound.POSITIVE;
            default -> Bound.NOT_NEGATIVE;
        };
    }

    static String suffix(Unit unit) {
        return switch (unit) {
            case MILLIMETRE -> "_mm";
            case NEWTON -> "_N";
            case CENTS -> "_cents";
            case MILLILITRES_PER_SECOND -> "_mL_per_s";
            case DEGREES_CELSIUS -> "_degC";
            case MINUTE -> "_min";
        };
    }

    private static Observed rimGap(Fields f) {
        double clock = f.number("clock", Bound.NOT_NEGATIVE, "6.5");
        if (clock > 12) {
            f.fault("clock", clock + " is no clock position: 12 is away from the hinge", "\"clock\": 6.5");
        }
        return new Observed.RimGap(f.number("value_mm", Bound.NOT_NEGATIVE, "0.06"), u(f), clock);
    }

    private static Observed trialPad(Fields f) {
        TrialVerdict verdict = f.choice("verdict", Spoken.of(TrialVerdict.values(), TrialVerdict::word));
        double gap = f.numberOr("oppositeGap_mm", 0, Bound.NOT_NEGATIVE, "0.12");
        if (verdict != TrialVerdict.LEVEL && f.has("verdict") && !(gap > 0)) {
            f.fault(
                    "oppositeGap_mm",
                    "it touched the " + verdict.word() + ", so there is a gap opposite",
                    "\"oppositeGap_mm\": 0.12");
        }
        return new Observed.TrialPad(f.number("stack_mm", Bound.POSITIVE, "4.5"), verdict, gap, u(f));
    }

    private static Observed trialShim(Fields f) {
        double without = f.number("without_mm", Bound.POSITIVE, "8.2");
        double with = f.number("with_mm", Bound.NOT_NEGATIVE, "5.9");
        if (f.has("without_mm") && f.has("with_mm") && !(without > with)) {
            f.fault("with_mm", "a shim at the foot lowers the cup", "\"without_mm\": 8.2, \"with_mm\": 5.9");
        }
        return new Observed.TrialShim(f.number("shim_mm", Bound.POSITIVE, "1.0"), without, with, u(f));
    }

    private static Observed pin(Fields f) {
        return new Observed.Pin(
                f.choice("sort", Spoken.of(PinSort.values(), PinSort::word)),
                f.number("at_mm", Bound.NOT_NEGATIVE, "612"),
                f.number("angle_deg", Bound.ANY, "-40"),
                f.number("size_mm", Bound.NOT_NEGATIVE, "14"),
                f.numberIfAny("clock", Bound.NOT_NEGATIVE, "3"),
                f.choiceOr("access", Spoken.of(PinAccess.values(), PinAccess::word), PinAccess.OUTSIDE),
                f.choiceOr("choice", Spoken.of(PinChoice.values(), PinChoice::word), PinChoice.LOOK));
    }

    private static @Nullable Double u(Fields f) {
        return f.numberIfAny("u_mm", Bound.NOT_NEGATIVE, "0.02");
    }

    static @Nullable Instant instant(Fields f) {
        String when = f.textIfAny("when", "2026-11-25T09:30:00Z");
        try {
            return when == null ? null : Instant.parse(when);
        } catch (DateTimeParseException not) {
            f.fault("when", "\"" + when + "\" is no instant", "\"when\": \"2026-11-25T09:30:00Z\"");
            return null;
        }
    }
}
