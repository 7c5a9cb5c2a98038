package hornwright.desk.jobfile;

import hornwright.bench.horn.Place;
import hornwright.bench.plan.Advice;
import hornwright.bench.plan.Built;
import hornwright.bench.plan.ClassOfPad;
import hornwright.bench.plan.Found;
import hornwright.bench.plan.PadChoice;
import hornwright.bench.plan.PlannedPlace;
import hornwright.desk.json.Out;
import org.jspecify.annotations.Nullable;

/** One place of a plan. */
final class PlaceOut {
    private final NumberJson numbers;

    PlaceOut(NumberJson numbers) {
        this.numbers = numbers;
    }

    Out write(Place place, PlannedPlace planned) {
        Out named = Out.object();
        planned.numbers().forEach((name, number) -> named.put(name.word(), numbers.write(number)));
        return Out.object()
                .put("id", place.id())
                .put("name", place.display())
                .put("kind", place.kind().word())
                .put("asBuilt", built(planned.asBuilt()))
                .put("found", found(planned.found()))
                .put("treatment", planned.treatment().word())
                .put("why", planned.why())
                .put("material", planned.material())
                .put("padClass", padClass(planned.padClass()))
                .put("provisional", planned.provisional())
                .put("numbers", named)
                .put("choices", planned.choices().stream().map(this::choice).toList())
                .put("advice", planned.advice().stream().map(PlaceOut::advice).toList());
    }

    private static @Nullable Out padClass(@Nullable ClassOfPad pad) {
        return pad == null
                ? null
                : Out.object()
                        .put("class", pad.is().word())
                        .put("why", pad.why())
                        .put("settled", pad.settled());
    }

    private static Out built(Built built) {
        return Out.object()
                .put("material", built.material())
                .put("colour", built.colour())
                .put("thickness_mm", built.thicknessMm())
                .put("thicknessIsAtLeast", built.atLeast())
                .put("says", built.says())
                .put("fromArchive", built.fromArchive());
    }

    private static @Nullable Out found(@Nullable Found found) {
        return found == null
                ? null
                : Out.object()
                        .put("material", found.material())
                        .put("thickness_mm", found.thicknessMm())
                        .put("colour", found.colour())
                        .put("condition", found.condition().word())
                        .put("originality", found.originality().word())
                        .put("byGroup", found.byGroup());
    }

    private Out choice(PadChoice choice) {
        return Out.object()
                .put("thickness_mm", choice.thicknessMm())
                .put("onShelf", choice.onShelf())
                .put("left", numbers.write(choice.left()))
                .put("fit", choice.fit().word());
    }

    private static Out advice(Advice advice) {
        return Out.object()
                .put("words", advice.words())
                .putTexts(
                        "cautions",
                        advice.cautions().stream()
                                .flatMap(hazard -> hazard.cautions().stream())
                                .toList())
                .putTexts("recheck", advice.recheck());
    }
}
