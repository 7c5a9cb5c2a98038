package hornwright.bench.plan.pads;

import hornwright.bench.plan.Advice;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PadChoice;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Warning;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The pad of one cup.
 *
 * @param place id of the pad's place
 * @param provisional why the numbers may still change; null when they stand
 * @param becauses of all its numbers
 */
public record PadAnswer(
        String place,
        Map<NumberName, PlannedNumber> numbers,
        List<PadChoice> choices,
        List<Advice> advice,
        List<Warning> warnings,
        @Nullable String provisional,
        Becauses becauses) {
    public PadAnswer {
        numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
        choices = List.copyOf(choices);
        advice = List.copyOf(advice);
        warnings = List.copyOf(warnings);
    }

    public Optional<PlannedNumber> number(NumberName name) {
        return Optional.ofNullable(numbers.get(name));
    }

    /** A number as an input of another chapter. */
    public Optional<Because.Input> input(String name, NumberName number) {
        return number(number).map(n -> Because.Input.of(name, n));
    }
}
