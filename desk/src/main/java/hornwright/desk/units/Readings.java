package hornwright.desk.units;

import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PlayGrade;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.TrialVerdict;
import hornwright.bench.survey.Unit;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads what is typed for a reading of any kind: an amount; a rim gap as {@code 0.08 at 4}; a play as {@code clear, felt}
 * (across, then along the rod); a trial pad as {@code 4.4 back 0.27} or {@code 4.4 level}; a stamp as it stands.
 */
public final class Readings {
    private static final Pattern GAP_AT =
            Pattern.compile("(\\S+?)\\s*(?:mm)?\\s*(?:at|@|,? )\\s*(\\d{1,2}(?:[.,]\\d)?)(?: ?o'clock| ?h)?");
    private static final Pattern TRIAL =
            Pattern.compile("(\\S+?)\\s*(?:mm)?,?\\s+(back|front|level)(?: first)?,?\\s*(\\S+)?(?: ?mm)?");
    private static final int LONGEST_STAMP = 40;

    /** A clearance may be nothing at all, a diameter may not. */
    private static final Set<ReadingKind> MAY_BE_NOTHING = EnumSet.of(
            ReadingKind.HINGE,
            ReadingKind.METAL_OFF,
            ReadingKind.NECK,
            ReadingKind.CLEARANCE,
            ReadingKind.LOST_MOTION,
            ReadingKind.LINKED_GAP,
            ReadingKind.CONTACT_GAP,
            ReadingKind.LEAK);

    private Readings() {}

    /** What came of it. */
    public sealed interface Outcome {
        record Says(Observed observed) implements Outcome {}

        record Unclear(String sentence) implements Outcome {}
    }

    public static Outcome read(ReadingKind kind, String raw, LengthUnit usual) {
        if (kind.says() == Observed.Amount.class) {
            return amount(kind, raw, usual);
        }
        String text = Plain.of(raw);
        if (kind.says() == Observed.RimGap.class) {
            return rimGap(text, usual);
        }
        if (kind.says() == Observed.Play.class) {
            return play(text);
        }
        return kind.says() == Observed.TrialPad.class ? trialPad(text, usual) : says(kind, raw);
    }

    /** How a reading is typed, so that it reads back as itself. */
    public static String typed(Observed observed) {
        return switch (observed) {
            case Observed.Amount amount -> plain(amount.value());
            case Observed.RimGap gap -> plain(gap.gapMm()) + " at " + plain(gap.clock());
            case Observed.Play play -> play.radial().word() + ", " + play.end().word();
            case Observed.TrialPad trial
            when trial.verdict() == TrialVerdict.LEVEL -> plain(trial.stackMm()) + " level";
            case Observed.TrialPad trial ->
                plain(trial.stackMm()) + " " + trial.verdict().word() + " " + plain(trial.oppositeGapMm());
            case Observed.TrialShim shim ->
                plain(shim.shimMm()) + " from " + plain(shim.withoutMm()) + " to " + plain(shim.withMm());
            case Observed.Pin pin -> pin.inWords();
            case Observed.Says says -> says.word();
        };
    }

    private static Outcome amount(ReadingKind kind, String raw, LengthUnit usual) {
        Unit unit = kind.unit() == null ? Unit.MILLIMETRE : kind.unit();
        Typed typed = switch (unit) {
            case MILLIMETRE -> Lengths.read(raw, usual);
            case NEWTON -> Forces.read(raw);
            case CENTS, MILLILITRES_PER_SECOND, DEGREES_CELSIUS, MINUTE -> number(raw, unit);
        };
        return switch (typed) {
            case Typed.Unclear unclear -> new Outcome.Unclear(unclear.sentence());
            case Typed.Amount amount
            when unit != Unit.CENTS && amount.value().signum() < (MAY_BE_NOTHING.contains(kind) ? 0 : 1) ->
                new Outcome.Unclear("A %s is %s; this reads %s."
                        .formatted(
                                kind.word(), MAY_BE_NOTHING.contains(kind) ? "0 or more" : "more than 0", raw.strip()));
            case Typed.Amount amount ->
                new Outcome.Says(new Observed.Amount(amount.value().doubleValue(), unit, null));
        };
    }

    private static Typed number(String raw, Unit unit) {
        String text = Plain.of(raw)
                .replace(unit.symbol().toLowerCase(Locale.ROOT), "")
                .strip();
        return Decimal.read(text)
                .<Typed>map(value -> new Typed.Amount(value, unit.symbol()))
                .orElseGet(() -> new Typed.Unclear(
                        "\"%s\" is no number of %s. Write it like 12.5.".formatted(raw.strip(), unit.symbol())));
    }

    private static Outcome rimGap(String text, LengthUnit usual) {
        Matcher shape = GAP_AT.matcher(text);
        if (shape.matches() && Lengths.read(shape.group(1), usual) instanceof Typed.Amount gap) {
            double clock = Double.parseDouble(shape.group(2).replace(',', '.'));
            if (clock > 0 && clock <= 12 && gap.value().signum() >= 0) {
                return new Outcome.Says(new Observed.RimGap(gap.value().doubleValue(), null, clock));
            }
        }
        return new Outcome.Unclear(
                "Write the gap and where it is by the clock, like: 0.08 at 4 (12 is away from the hinge).");
    }

    private static Outcome play(String text) {
        List<String> words = Arrays.stream(text.split("\\s*[,/;]\\s*"))
                .filter(word -> !word.isEmpty())
                .toList();
        Optional<PlayGrade> across = words.isEmpty() ? Optional.empty() : grade(words.getFirst());
        Optional<PlayGrade> along = words.size() < 2 ? Optional.of(PlayGrade.NONE) : grade(words.get(1));
        return across.isEmpty() || along.isEmpty() || words.size() > 2
                ? new Outcome.Unclear(
                        "Write the play across the rod, then along it: none, felt, clear or loose; like: clear, felt.")
                : new Outcome.Says(new Observed.Play(across.get(), along.get()));
    }

    /** The grade whose word, or whose word's last part, begins so: "f", "felt", "just felt". */
    private static Optional<PlayGrade> grade(String said) {
        return Arrays.stream(PlayGrade.values())
                .filter(grade -> grade.word().startsWith(said)
                        || grade.word()
                                .substring(grade.word().lastIndexOf(' ') + 1)
                                .startsWith(said))
                .findFirst();
    }

    private static Outcome trialPad(String text, LengthUnit usual) {
        Matcher shape = TRIAL.matcher(text);
        if (shape.matches() && Lengths.read(shape.group(1), usual) instanceof Typed.Amount stack) {
            TrialVerdict verdict = switch (shape.group(2)) {
                case "back" -> TrialVerdict.BACK_FIRST;
                case "front" -> TrialVerdict.FRONT_FIRST;
                default -> TrialVerdict.LEVEL;
            };
            Typed gap = shape.group(3) == null
                    ? new Typed.Amount(BigDecimal.ZERO, "")
                    : Lengths.read(shape.group(3), usual);
            boolean fits = (verdict == TrialVerdict.LEVEL) == (shape.group(3) == null);
            if (fits && gap instanceof Typed.Amount opposite) {
                return new Outcome.Says(new Observed.TrialPad(
                        stack.value().doubleValue(), verdict, opposite.value().doubleValue(), null));
            }
        }
        return new Outcome.Unclear(
                "Write the stack, where it touched first and the feeler opposite, like: 4.4 back 0.27, or: 4.4 level.");
    }

    private static Outcome says(ReadingKind kind, String raw) {
        String word = raw.strip();
        return word.length() > LONGEST_STAMP
                ? new Outcome.Unclear("A %s is at most 40 letters and figures.".formatted(kind.word()))
                : new Outcome.Says(new Observed.Says(word));
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
