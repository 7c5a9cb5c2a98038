package hornwright.desk.web.feel;

import hornwright.bench.plan.ClassOfPad;
import hornwright.bench.plan.seat.SeatAnswer;
import hornwright.bench.plan.seat.SeatAnswer.Closes;
import hornwright.bench.survey.PadClass;
import hornwright.desk.web.feel.ClosingPage.OfClass;
import hornwright.desk.web.feel.ClosingPage.PadClasses;
import hornwright.desk.web.view.OnBench;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;

/** Writes what each class of pad would come to, and what it costs. */
final class ClassRows {
    private final OnBench bench;

    ClassRows(OnBench bench) {
        this.bench = bench;
    }

    PadClasses of(Map<PadClass, List<SeatAnswer>> ifAll) {
        ClassOfPad horn = ClassOfPad.of(List.copyOf(bench.job().decisions().values()), "");
        return new PadClasses(
                bench.address("closing/pads"),
                horn.why(),
                horn.settled(),
                bench.history().seq(),
                UUID.randomUUID().toString(),
                Stream.of(PadClass.values())
                        .map(one -> new OfClass(
                                one.name(),
                                OnBench.capital(one.word()),
                                one == horn.is(),
                                closes(ifAll.getOrDefault(one, List.of())),
                                price(one)))
                        .toList());
    }

    private static String closes(List<SeatAnswer> pads) {
        List<String> parts = new ArrayList<>();
        for (Closes one : Closes.values()) {
            long count = pads.stream().filter(pad -> pad.closes() == one).count();
            if (count > 0) {
                parts.add(count + " " + one.word());
            }
        }
        return String.join(", ", parts);
    }

    /** Common practice. */
    private static String price(PadClass padClass) {
        return switch (padClass) {
            case SOFT ->
                "forgives most at the float; feels spongy, takes a deeper seat in its first weeks, so heights and links are"
                        + " looked at again sooner; over a warped hole a compromise";
            case MEDIUM -> "between the two";
            case FIRM -> "feels firm and keeps its seat; wants level holes and the most patience at the float";
        };
    }
}
